package comparand.reference;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/**
 * Two reports that may be of one study: a preprint or an abstract and an article of the same authors with near-equal title; or,
 * among the sources of a library, reports that share an author and a device, the smaller one no larger than the other. Both within
 * three years. It is proposed with the line to type, and nothing is written.
 *
 * @param early what appeared first: the record that the line belongs in
 * @param reason as a clause
 * @param isPreprint whether the early one is a preprint, which the other may replace
 * @param isSaid whether a record says it already
 * @param at where the line would go
 */
public record SameStudy(String early, String whole, String reason, boolean isPreprint, boolean isSaid, Span at) {

    private static final int YEARS = 3;

    /** A report that may have another: a source of the library, or a new one that has no values yet. */
    private record Report(String id, Reference reference, Stage stage, Optional<Known> known, Span at) {

        static Report of(Known known) {
            return new Report(
                    known.id(),
                    known.reference(),
                    known.stage(),
                    Optional.of(known),
                    known.said().orElse(known.source().source().span()));
        }
    }

    /** The pairs within a library. */
    public static List<SameStudy> within(Collection<Known> library) {
        var reports = library.stream().map(Report::of).toList();
        return pairs(reports, reports);
    }

    /** The pairs that new references make, with each other and with a library. */
    static List<SameStudy> ofNew(Collection<Proposal> fresh, Collection<Known> library) {
        var reports = fresh.stream()
                .map(p -> new Report(
                        p.id(),
                        p.found().reference(),
                        Stage.of(p.found().reference()),
                        Optional.empty(),
                        p.found().at()))
                .toList();
        var all = new ArrayList<>(reports);
        library.forEach(k -> all.add(Report.of(k)));
        return pairs(reports, all);
    }

    private static List<SameStudy> pairs(List<Report> some, List<Report> others) {
        var pairs = new ArrayList<SameStudy>();
        var both = new HashSet<>(some.stream().map(Report::id).toList());
        for (var a : some) {
            for (var b : others) {
                boolean isTwice = both.contains(b.id()) && a.id().compareTo(b.id()) >= 0;
                if (!isTwice && !a.id().equals(b.id())) {
                    pair(a, b).ifPresent(pairs::add);
                }
            }
        }
        return pairs;
    }

    private static Optional<SameStudy> pair(Report a, Report b) {
        if (Likeness.years(a.reference, b.reference) > YEARS) {
            return Optional.empty();
        }
        var early = isFirst(a, b) ? a : b;
        var whole = early.equals(a) ? b : a;
        return reason(early, whole)
                .map(r -> new SameStudy(
                        early.id, whole.id, r, early.stage == Stage.PREPRINT, isSaid(early, whole), early.at));
    }

    /** The early form; of two articles the one with the smaller sample. */
    private static boolean isFirst(Report a, Report b) {
        if (a.stage.isEarly() != b.stage.isEarly()) {
            return a.stage.isEarly();
        }
        int one = a.known.map(k -> k.sample().orElse(0)).orElse(0);
        int other = b.known.map(k -> k.sample().orElse(0)).orElse(0);
        return one != other ? one < other : a.id.compareTo(b.id) < 0;
    }

    private static Optional<String> reason(Report early, Report whole) {
        boolean isPair = early.stage.isEarly() && !whole.stage.isEarly();
        if (isPair
                && sameAuthors(early.reference, whole.reference)
                && Titles.alike(early.reference.title(), whole.reference.title())) {
            return Optional.of("%s and %s of the same authors with near-equal title"
                    .formatted(early.stage.word(), whole.stage.word()));
        }
        return early.known.flatMap(e -> whole.known.flatMap(w -> overlap(e, w, isPair)));
    }

    private static boolean sameAuthors(Reference a, Reference b) {
        return Persons.sameFirst(a, b)
                || (!a.authors().isEmpty()
                        && !b.authors().isEmpty()
                        && 2 * Persons.shared(a, b)
                                >= Math.min(a.authors().size(), b.authors().size()));
    }

    private static Optional<String> overlap(Known early, Known whole, boolean isPair) {
        boolean areClinical = early.source().kind().value() == comparand.model.library.SourceKind.CLINICAL_PAPER
                && whole.source().kind().value() == comparand.model.library.SourceKind.CLINICAL_PAPER;
        var devices = early.devices();
        devices.retainAll(whole.devices());
        var small = early.sample();
        var large = whole.sample();
        boolean fits = small.isPresent() && large.isPresent() && small.getAsInt() <= large.getAsInt();
        return (isPair || areClinical)
                        && fits
                        && !devices.isEmpty()
                        && Persons.shared(early.reference(), whole.reference()) > 0
                ? Optional.of("an author in common, %s in both, and %d may lie within %d"
                        .formatted(String.join(", ", devices), small.getAsInt(), large.getAsInt()))
                : Optional.empty();
    }

    private static boolean isSaid(Report early, Report whole) {
        return early.known.filter(k -> k.isTiedTo(whole.id)).isPresent()
                || whole.known.filter(k -> k.isTiedTo(early.id)).isPresent();
    }

    /** As a sentence. */
    public String sentence() {
        return "%s may report the same study as %s: %s%s"
                .formatted(early, whole, reason, isSaid ? "; the library says so already" : "");
    }

    /** What to type, where no record says it. */
    public Optional<Diagnostic> finding() {
        return isSaid
                ? Optional.empty()
                : Optional.of(Diagnostic.note(
                        "same-study-proposed",
                        at,
                        "`%s` may report the same study as `%s`: %s".formatted(early, whole, reason),
                        "one study in two reports would count twice",
                        "if it does, write `same-study-as: %s` in sources/%s.yaml%s"
                                .formatted(
                                        whole,
                                        early,
                                        isPreprint
                                                ? "; if the article replaces it, `state: preprint` and `by: %s` under `status:`"
                                                        .formatted(whole)
                                                : "")));
    }
}
