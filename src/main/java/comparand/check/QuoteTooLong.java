package comparand.check;

/**
 * What it checks: a quote of more than 300 characters.
 *
 * <p>Why it matters: a quote is there to be compared with the source at a glance, and long ones are not ours to
 * reprint.
 *
 * <p>What to write instead: the sentence or the table cell alone.
 */
final class QuoteTooLong implements Rule {

    @Override
    public String code() {
        return "quote-too-long";
    }

    private static final int LONGEST = 300;

    @Override
    public void check(Context library, Findings findings) {
        library.quotes()
                .filter(q -> q.value().length() > LONGEST)
                .forEach(q -> findings.note(
                        q.span(),
                        "this quote has %d characters, more than %d"
                                .formatted(q.value().length(), LONGEST),
                        "a quote is there to be compared at a glance, and long ones are not ours to reprint",
                        "keep the sentence or the table cell that holds the value"));
    }
}
