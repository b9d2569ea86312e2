package comparand.reference;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Works by what they are known by, so that a thousand references are compared in no noticeable time. */
final class Works {

    private static final int UNDATED = Integer.MIN_VALUE;
    private static final LevenshteinDistance ONE = new LevenshteinDistance(1);

    private final Map<String, Work> byDoi = new HashMap<>();
    private final Map<String, Work> byPmid = new HashMap<>();
    private final Map<Integer, List<Work>> byYear = new HashMap<>();

    private record Work(String id, Reference reference, String author) {}

    /** A work that another seems to be, and why. */
    record Same(String id, Likeness likeness) {}

    /** Of two works with one identifier the first is found. */
    void add(String id, Reference reference) {
        var work = new Work(id, reference, author(reference));
        reference.field(Field.DOI).ifPresent(d -> byDoi.putIfAbsent(Doi.key(d), work));
        reference.field(Field.PMID).ifPresent(p -> byPmid.putIfAbsent(Likeness.number(p), work));
        byYear.computeIfAbsent(reference.year().orElse(UNDATED), y -> new ArrayList<>())
                .add(work);
    }

    Optional<Same> find(Reference reference) {
        return reference
                .field(Field.DOI)
                .flatMap(d -> Optional.ofNullable(byDoi.get(Doi.key(d))))
                .or(() -> reference.field(Field.PMID).flatMap(p -> Optional.ofNullable(byPmid.get(Likeness.number(p)))))
                .or(() -> byTitle(reference))
                .flatMap(w -> Likeness.of(reference, w.reference).map(l -> new Same(w.id, l)));
    }

    private Optional<Work> byTitle(Reference reference) {
        var author = author(reference);
        int year = reference.year().orElse(UNDATED);
        int reach = year == UNDATED ? 0 : Likeness.YEARS;
        for (int y = year - reach; y <= year + reach; y++) {
            for (var work : byYear.getOrDefault(y, List.of())) {
                boolean mayBe = ONE.apply(author, work.author) >= 0;
                if (mayBe && Likeness.of(reference, work.reference).isPresent()) {
                    return Optional.of(work);
                }
            }
        }
        return Optional.empty();
    }

    private static String author(Reference reference) {
        return reference.firstAuthor().map(a -> Latin.words(a.last())).orElse("");
    }
}
