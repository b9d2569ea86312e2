package comparand.reference;

import static java.util.Objects.requireNonNull;

import comparand.diag.Diagnostic;
import comparand.model.library.SourceRecord;
import comparand.model.library.SourceState;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What an import would do with all references of its files.
 *
 * @param references in the order of the files
 * @param studies pairs that may report one study, those of the library among them where a reference is one of its sources
 * @param findings what the library should say and does not
 */
public record Proposals(List<Proposal> references, List<SameStudy> studies, List<Diagnostic> findings) {

    public Proposals {
        references = List.copyOf(references);
        studies = List.copyOf(studies);
        findings = List.copyOf(findings);
    }

    /**
     * Sets the references of files beside each other and beside a library.
     *
     * @param also names of references that are held back and shall be written all the same
     * @param today the day on which the person looks
     */
    public static Proposals of(List<Found> found, Collection<SourceRecord> sources, Set<String> also, LocalDate today) {
        return new Comparing(sources.stream().map(Known::of).toList(), also, today).all(found);
    }

    /** The references that would be written. */
    public List<Proposal> written() {
        return references.stream().filter(p -> !p.isHeld()).toList();
    }

    /** One import. */
    private static final class Comparing {

        private final List<Known> library;
        private final Set<String> also;
        private final LocalDate today;
        private final SourceId ids;
        private final Map<String, Known> byId = new HashMap<>();
        private final Works works = new Works();
        private final List<Diagnostic> findings = new ArrayList<>();
        private final Set<String> met = new LinkedHashSet<>();

        Comparing(List<Known> library, Set<String> also, LocalDate today) {
            this.library = library;
            this.also = also;
            this.today = today;
            library.forEach(k -> byId.put(k.id(), k));
            library.forEach(k -> works.add(k.id(), k.reference()));
            this.ids = new SourceId(byId.keySet());
        }

        Proposals all(List<Found> found) {
            var proposals = found.stream().map(this::proposal).toList();
            var fresh = proposals.stream().filter(p -> !p.isHeld()).toList();
            var studies = new ArrayList<>(SameStudy.within(library).stream()
                    .filter(s -> met.contains(s.early()) || met.contains(s.whole()))
                    .toList());
            studies.addAll(SameStudy.ofNew(fresh, library));
            studies.forEach(s -> s.finding().ifPresent(findings::add));
            return new Proposals(proposals, studies, findings);
        }

        private Proposal proposal(Found found) {
            var held = held(found);
            var id = ids.next(found.reference());
            var kept = held.filter(h -> !also.contains(id));
            if (kept.isEmpty()) {
                works.add(id, found.reference());
            }
            return new Proposal(id, found, KindGuess.of(found.reference()), kept);
        }

        private Optional<Proposal.Held> held(Found found) {
            var about = NoticeAbout.of(found.reference());
            if (about.isPresent()) {
                return Optional.of(notice(found, about.get()));
            }
            return works.find(found.reference())
                    .map(same -> byId.containsKey(same.id())
                            ? ofLibrary(found, requireNonNull(byId.get(same.id())), same.likeness())
                            : new Proposal.Held(
                                    same.id(), false, same.likeness().reason() + ", in these files"));
        }

        private Proposal.Held ofLibrary(Found found, Known known, Likeness like) {
            met.add(known.id());
            var notice = found.reference().notice();
            notice.flatMap(n -> Standing.finding(known, n, found, today)).ifPresent(findings::add);
            var standing = notice.map(n -> Standing.isRecorded(known, n)
                            ? "; " + n.word() + ", as its record says"
                            : "; " + n.word() + ", which its record does not say")
                    .orElse("");
            return new Proposal.Held(known.id(), false, like.reason() + standing);
        }

        private Proposal.Held notice(Found found, NoticeAbout about) {
            var target = about.target(library);
            target.ifPresent(known -> {
                met.add(known.id());
                var notice = new Notice(
                        about.state(),
                        found.reference().brief(),
                        found.reference().issued());
                Standing.finding(known, notice, found, today).ifPresent(findings::add);
            });
            return new Proposal.Held(
                    target.map(Known::id).orElse(""),
                    true,
                    about.state() == SourceState.RETRACTED
                            ? "a retraction"
                            : about.state() == SourceState.CONCERN ? "an expression of concern" : "a correction");
        }
    }
}
