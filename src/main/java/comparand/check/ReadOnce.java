package comparand.check;

import comparand.model.library.ValueRecord;

/**
 * What it checks: values of a source that only one person read.
 *
 * <p>Why it matters: slips of one reader stay unseen.
 *
 * <p>What to write instead: a second reading under {@code read:}.
 */
final class ReadOnce implements Rule {

    @Override
    public String code() {
        return "read-once";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.library().sources().values().forEach(source -> {
            var once = source.values().stream().filter(v -> readers(v) < 2).toList();
            if (!once.isEmpty()) {
                findings.note(
                        once.get(0).id().span(),
                        "read by fewer than two people: %d of the %d values of `%s`"
                                .formatted(once.size(), source.values().size(), source.id()),
                        "a slip of a single reader stays unseen",
                        "have a second person read them and add `{by: ..., on: ..., agrees: yes}` under `read:`");
            }
        });
    }

    /** People, not entries: nobody is a second reader of their own reading. */
    private static long readers(ValueRecord value) {
        return value.read().stream().map(r -> r.by().value()).distinct().count();
    }
}
