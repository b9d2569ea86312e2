package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.metric.Catalogue;
import comparand.model.library.DeviceRecord;
import comparand.model.library.DossierRecord;
import comparand.model.library.ScreeningRecord;
import comparand.model.library.SourceRecord;
import comparand.model.library.StudyRecord;
import comparand.model.library.ValueRecord;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Everything a library folder holds, as written; every map is by id and sorted, so that the order of files on disk never
 * shows.
 *
 * @param catalogue the shipped metrics and those the library declares
 * @param data the raw data files of the studies, by the file name findings use
 * @param fingerprints SHA-256 of every file read, in hexadecimal, by its path within the library
 * @param laidOver of these, the files of a second folder that took the place of the library's for this run: what findings
 *     call them, by the path within the library
 */
public record Library(
        SortedMap<String, DeviceRecord> devices,
        SortedMap<String, SourceRecord> sources,
        SortedMap<String, StudyRecord> studies,
        SortedMap<String, ScreeningRecord> screenings,
        SortedMap<String, DossierRecord> dossiers,
        Catalogue catalogue,
        SortedMap<String, RowSource> data,
        SortedMap<String, String> fingerprints,
        SortedMap<String, String> laidOver) {

    public Library {
        requireNonNull(catalogue, "catalogue");
        devices = copy(devices);
        sources = copy(sources);
        studies = copy(studies);
        screenings = copy(screenings);
        dossiers = copy(dossiers);
        data = copy(data);
        fingerprints = copy(fingerprints);
        laidOver = copy(laidOver);
    }

    private static <V> SortedMap<String, V> copy(SortedMap<String, V> map) {
        return Collections.unmodifiableSortedMap(new TreeMap<>(map));
    }

    /** The same with other sources, to see what would become of them. */
    public Library withSources(SortedMap<String, SourceRecord> others) {
        return new Library(devices, others, studies, screenings, dossiers, catalogue, data, fingerprints, laidOver);
    }

    /** The same with the fingerprints of other files. */
    public Library withFingerprints(SortedMap<String, String> others) {
        return new Library(devices, sources, studies, screenings, dossiers, catalogue, data, others, laidOver);
    }

    public Optional<DeviceRecord> device(String id) {
        return Optional.ofNullable(devices.get(id));
    }

    public Optional<StudyRecord> study(String id) {
        return Optional.ofNullable(studies.get(id));
    }

    public Optional<SourceRecord> source(String id) {
        return Optional.ofNullable(sources.get(id));
    }

    /** The log that a dossier names. */
    public Optional<ScreeningRecord> screening(DossierRecord dossier) {
        return dossier.screening().flatMap(s -> Optional.ofNullable(screenings.get(s.value())));
    }

    /** All published values with their sources, by source and then in file order. */
    public Stream<PublishedValue> values() {
        return sources.values().stream().flatMap(s -> s.values().stream().map(v -> new PublishedValue(s, v)));
    }

    /** A value and the source it was taken from. */
    public record PublishedValue(SourceRecord source, ValueRecord value) {

        public String id() {
            return value.id().value();
        }
    }
}
