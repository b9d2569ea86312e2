package comparand.simulation;

import comparand.app.WholeRun;
import comparand.model.Answer;
import comparand.model.Comparison;
import comparand.model.Pairing.Purpose;
import comparand.model.Step;
import comparand.simulation.Judged.Kind;
import comparand.simulation.Reading.Why;
import comparand.simulation.Reading.Withheld;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Writes a library, has it read by the tool and by the naive reader, and sets both beside the truth. */
final class Judge {

    private static final Set<Step.Kind> MADE = Set.of(Step.Kind.SELECTED, Step.Kind.REGRESSED, Step.Kind.READ_OFF);

    private final SimulatedLibrary library;
    private final List<Comparison> comparisons;
    private final NaiveReader.Says naive;

    private Judge(SimulatedLibrary library, Path folder) throws IOException {
        this.library = library;
        library.write(folder);
        this.comparisons = WholeRun.of(folder.resolve(SimulatedLibrary.DOSSIER)).comparisons();
        this.naive = NaiveReader.read(folder);
    }

    /** The libraries with the numbers 1 to count, in their order. */
    static List<Judged> libraries(int count) {
        return IntStream.rangeClosed(1, count)
                .parallel()
                .mapToObj(Judge::library)
                .flatMap(List::stream)
                .toList();
    }

    private static List<Judged> library(int number) {
        try {
            var folder = Files.createTempDirectory("simulated-" + number + "-");
            try {
                return in(folder, number);
            } finally {
                remove(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The library of a number, left in a folder. */
    static List<Judged> in(Path folder, int number) throws IOException {
        return new Judge(SimulatedLibrary.of(number), folder).judged();
    }

    private List<Judged> judged() {
        var judged = new ArrayList<Judged>();
        library.published().forEach(p -> judged.add(published(p)));
        for (var c : comparisons) {
            var purpose = c.pairing().purpose();
            if (purpose == Purpose.LOCAL_AGAINST_PUBLISHED
                    && c.pairing().theirs().id().contains("~")) {
                judged.add(readOff(c));
            } else if (purpose == Purpose.AGAINST_PRESENT_DEVICE) {
                judged.add(devices(c, Kind.PRESENT, naive.present()));
            } else if (purpose == Purpose.WITHIN_CENTRE) {
                judged.add(devices(c, Kind.WITHIN_HOSPITAL, Optional.empty()));
            }
        }
        return judged;
    }

    private Judged published(Published p) {
        var pair = comparisons.stream()
                .filter(c -> c.pairing().purpose() == Purpose.LOCAL_AGAINST_PUBLISHED
                        && c.pairing().theirs().id().equals(p.id()))
                .findFirst();
        return new Judged(
                library.number(),
                Kind.PUBLISHED,
                library.local(),
                Optional.of(p),
                Optional.of(Cause.of(p.unlike(), p.trulyOther(), p.print(), library.local())),
                new Truth(p.difference(), library.world().margin(), p.limit() - p.local()),
                pair.flatMap(c -> asPrinted(c, p)),
                pair.map(ToolReading::of).orElse(new Withheld(Why.NOT_PAIRED)),
                pair.flatMap(Judge::made),
                Optional.of(naive.of(p.id())));
    }

    private static Optional<Step.Kind> made(Comparison pair) {
        return pair.pairing().ours().trail().stream()
                .map(Step::kind)
                .filter(MADE::contains)
                .findFirst();
    }

    private Optional<Truth> asPrinted(Comparison pair, Published p) {
        return pair.answer() instanceof Answer.AgainstFigure a
                ? Optional.of(Truth.of(p.local() - a.figure(), library.world().margin()))
                : Optional.empty();
    }

    /** Two points of one source have one true difference, and so has what lies between them. */
    private Judged readOff(Comparison pair) {
        var name = pair.pairing().theirs().id();
        var below = library.published().stream()
                .filter(p -> p.id().equals(name.substring(0, name.indexOf('~'))))
                .findFirst()
                .orElseThrow();
        return new Judged(
                library.number(),
                Kind.READ_OFF,
                library.local(),
                Optional.of(below),
                Optional.empty(),
                Truth.of(below.difference(), library.world().margin()),
                Optional.empty(),
                ToolReading.of(pair),
                made(pair),
                Optional.empty());
    }

    private Judged devices(Comparison pair, Kind kind, Optional<Reading> other) {
        return new Judged(
                library.number(),
                kind,
                library.local(),
                Optional.empty(),
                Optional.empty(),
                Truth.of(
                        library.local().againstPresent().orElseThrow(),
                        library.world().margin()),
                Optional.empty(),
                ToolReading.of(pair),
                made(pair),
                other);
    }

    private static void remove(Path folder) throws IOException {
        try (var paths = Files.walk(folder)) {
            for (var path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
