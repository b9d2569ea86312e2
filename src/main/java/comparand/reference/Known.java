package comparand.reference;

import comparand.model.library.SampleSize;
import comparand.model.library.SourceRecord;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** A source of the library, as a reference. */
public record Known(SourceRecord source, Reference reference) {

    public static Known of(SourceRecord source) {
        return new Known(source, Recorded.reference(source));
    }

    public String id() {
        return source.id();
    }

    Stage stage() {
        return switch (source.kind().value()) {
            case PREPRINT -> Stage.PREPRINT;
            case ABSTRACT, LETTER -> Stage.ABSTRACT;
            case INSTRUCTIONS_FOR_USE, BENCH_PAPER, CLINICAL_PAPER, STANDARD, REGISTRY_REPORT, FLYER -> Stage.WHOLE;
        };
    }

    /** The devices its values are of. */
    Set<String> devices() {
        return source.values().stream().map(v -> v.device().value()).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The largest sample of its values. */
    OptionalInt sample() {
        return source.values().stream()
                .flatMap(v -> v.n().stream())
                .flatMap(n -> n.value().size().stream())
                .mapToInt(SampleSize::count)
                .max();
    }

    /** Whether one of two records says already that they belong together. */
    boolean isTiedTo(String id) {
        return source.sameStudyAs().filter(s -> s.value().equals(id)).isPresent()
                || source.status().by().filter(b -> b.value().equals(id)).isPresent();
    }

    /** Where a line about its study would go. */
    Optional<comparand.diag.Span> said() {
        return source.sameStudyAs()
                .map(s -> s.span())
                .or(() -> source.status().by().map(b -> b.span()));
    }
}
