package comparand.check;

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
            var once = source.values().stream().filter(v -> v.read().size() < 2).toList();
            if (!once.isEmpty()) {
                findings.note(
                        once.get(0).id().span(),
                        "%d of %d values of `%s` were read by one person only"
                                .formatted(once.size(), source.values().size(), source.id()),
                        "a slip of a single reader stays unseen",
                        "have a second person read them and add `{by: ..., on: ..., agrees: yes}` under `read:`");
            }
        });
    }
}
