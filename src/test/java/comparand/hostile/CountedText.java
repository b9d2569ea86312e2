package comparand.hostile;

/** A text that counts how often a sign of it is looked at, and ends the looking when that is too often. */
final class CountedText implements CharSequence {

    private final String text;
    private final long most;
    private final long[] count;

    CountedText(String text, long most) {
        this(text, most, new long[1]);
    }

    private CountedText(String text, long most, long[] count) {
        this.text = text;
        this.most = most;
        this.count = count;
    }

    /** Signs were looked at more often than they may be. */
    static final class TooMany extends RuntimeException {
        private static final long serialVersionUID = 1L;

        TooMany() {
            super("too many steps", null, false, false);
        }
    }

    long steps() {
        return count[0];
    }

    @Override
    public int length() {
        return text.length();
    }

    @Override
    public char charAt(int index) {
        if (++count[0] > most) {
            throw new TooMany();
        }
        return text.charAt(index);
    }

    @Override
    public CharSequence subSequence(int start, int end) {
        return new CountedText(text.substring(start, end), most, count);
    }

    @Override
    public String toString() {
        return text;
    }
}
