package comparand.check;

import comparand.diag.Span;
import java.util.HashMap;

/**
 * What it checks: a value whose id another value of the library has already.
 *
 * <p>Why it matters: references, trails and outputs name values by their id alone.
 *
 * <p>What to write instead: an id of its own, such as {@code B22}.
 */
final class ValueIdTwice implements Rule {

    @Override
    public String code() {
        return "value-id-twice";
    }

    @Override
    public void check(Context library, Findings findings) {
        var seen = new HashMap<String, Span>();
        library.values().forEach(v -> {
            var first = seen.putIfAbsent(v.id(), v.value().id().span());
            if (first != null) {
                findings.stop(
                        v.value().id().span(),
                        "the id `%s` is taken at %s".formatted(v.id(), first),
                        "outputs and trails name values by their id alone",
                        "give this value an id of its own");
            }
        });
    }
}
