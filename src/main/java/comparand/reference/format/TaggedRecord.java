package comparand.reference.format;

import comparand.diag.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The tags of one record. What is taken out has been read; what is left in the end has no place in a citation. */
final class TaggedRecord {

    private final Span at;
    private final List<Tagged> left;

    TaggedRecord(Span at, List<Tagged> tags) {
        this.at = at;
        this.left = new ArrayList<>(tags);
    }

    Span at() {
        return at;
    }

    /** The first of a tag, those named first before the others. */
    Optional<Tagged> take(String... tags) {
        for (var tag : tags) {
            for (var candidate : left) {
                if (candidate.tag().equals(tag) && !candidate.text().isBlank()) {
                    left.remove(candidate);
                    return Optional.of(candidate);
                }
            }
        }
        return Optional.empty();
    }

    /** All of some tags, in the order of the file. */
    List<Tagged> takeAll(String... tags) {
        var wanted = List.of(tags);
        var taken = left.stream().filter(t -> wanted.contains(t.tag())).toList();
        left.removeAll(taken);
        return taken;
    }

    /** Takes out what only says again what was read under another tag. */
    void dropSame(String text, String... tags) {
        var plain = Plain.text(text);
        left.removeIf(
                t -> List.of(tags).contains(t.tag()) && Plain.text(t.text()).equals(plain));
    }

    void remove(Tagged tagged) {
        left.remove(tagged);
    }

    /** What has not been taken out. */
    List<Tagged> left() {
        return List.copyOf(left);
    }
}
