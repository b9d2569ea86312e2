package comparand.check;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.model.Library;
import comparand.model.library.DeviceRecord;
import comparand.model.library.DossierRecord;
import comparand.model.library.SourceRecord;
import comparand.model.library.ValueRecord;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What of a library a dossier rests on. The library of a department holds the sources of many devices; a report on four of them
 * neither lists the others nor tells what was found in them, and stays as it is when one of them is changed.
 *
 * <p>A source is beside the matter if all of its values are of other devices and nothing that is kept names it or is named by
 * it: the dossier, its devices, its studies, its log of screening, and the sources kept.
 */
final class RestedOn {

    private final Library library;
    private final String dossier;
    private final Set<String> devices;
    private final Set<String> studies;
    private final Set<String> kept = new HashSet<>();

    RestedOn(Library library, DossierRecord dossier) {
        this.library = library;
        this.dossier = dossier.id();
        this.devices = values(dossier.devices());
        this.studies = values(dossier.studies());
        library.sources().values().stream().filter(this::isOfItsDevices).forEach(this::keep);
        keepNamed(dossier);
        library.screening(dossier).ifPresent(this::keepNamed);
        devices.stream().flatMap(d -> library.device(d).stream()).forEach(this::keepNamed);
        studies.stream().flatMap(s -> library.study(s).stream()).forEach(this::keepNamed);
        keepThoseThatNameThem();
    }

    private static Set<String> values(List<Located<String>> all) {
        return all.stream().map(Located::value).collect(Collectors.toSet());
    }

    /** One without values may have been recorded for any of the devices. */
    private boolean isOfItsDevices(SourceRecord source) {
        return source.values().isEmpty()
                || source.values().stream()
                        .map(ValueRecord::device)
                        .map(Located::value)
                        .anyMatch(devices::contains);
    }

    private void keep(SourceRecord source) {
        if (kept.add(source.id())) {
            keepNamed(source);
        }
    }

    private void keepNamed(Record record) {
        for (var name : RecordTexts.of(record)) {
            library.source(name).ifPresent(this::keep);
        }
    }

    private void keepThoseThatNameThem() {
        int before;
        do {
            before = kept.size();
            library.sources().values().stream()
                    .filter(s -> !kept.contains(s.id()))
                    .filter(s -> related(s).anyMatch(kept::contains))
                    .forEach(this::keep);
        } while (kept.size() > before);
    }

    private static Stream<String> related(SourceRecord source) {
        return Stream.of(source.status().by(), source.sameStudyAs())
                .flatMap(Optional::stream)
                .map(Located::value);
    }

    /** The library without the sources beside the matter, and without the fingerprints of these and of other reports. */
    Library library() {
        var sources = new TreeMap<>(library.sources());
        sources.keySet().retainAll(kept);
        var fingerprints = new TreeMap<>(library.fingerprints());
        fingerprints.keySet().removeIf(this::isOfOthers);
        return library.withSources(sources).withFingerprints(fingerprints);
    }

    private boolean isOfOthers(String file) {
        var parts = file.split("/", 3);
        if (parts.length < 2) {
            return false;
        }
        var name = parts[1].replaceFirst("\\.yaml$", "");
        return switch (parts[0]) {
            case "sources" -> library.source(name).isPresent() && !kept.contains(name);
            case "studies" -> library.study(name).isPresent() && !studies.contains(name);
            case "dossiers" -> !name.equals(dossier);
            default -> false;
        };
    }

    /** The findings that are about it; one that stops is, wherever it was found. */
    List<Diagnostic> findings(List<Diagnostic> all) {
        var elsewhere = Stream.of(
                        besides().map(s -> s.source()),
                        library.devices().values().stream()
                                .filter(d -> !devices.contains(d.id()))
                                .map(DeviceRecord::device),
                        library.studies().values().stream()
                                .filter(s -> !studies.contains(s.id()))
                                .map(s -> s.study()))
                .flatMap(records -> records)
                .map(name -> name.span().file())
                .collect(Collectors.toSet());
        return all.stream()
                .filter(d -> d.stops() || !elsewhere.contains(d.span().file()))
                .toList();
    }

    private Stream<SourceRecord> besides() {
        return library.sources().values().stream().filter(s -> !kept.contains(s.id()));
    }
}
