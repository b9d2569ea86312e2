package comparand.intake;

import comparand.unit.Rounding;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What two readers answered to one slot.
 *
 * @param first as recorded; empty where the first reader answered nothing
 * @param second as the second reader found it; empty likewise
 */
record FieldPair(Slot slot, String first, String second) {

    /** How two answers stand to each other. */
    enum Verdict {
        SAME("same"),
        SAME_ROUNDED("same within rounding"),
        DIFFERENT("different"),
        ONLY_FIRST("only the first reader found it"),
        ONLY_SECOND("only the second reader found it");

        private final String text;

        Verdict(String text) {
            this.text = text;
        }

        String text() {
            return text;
        }

        boolean isAgreement() {
            return this == SAME || this == SAME_ROUNDED;
        }
    }

    Verdict verdict() {
        if (first.isEmpty() || second.isEmpty()) {
            return first.equals(second) ? Verdict.SAME : first.isEmpty() ? Verdict.ONLY_SECOND : Verdict.ONLY_FIRST;
        }
        var a = number(first);
        var b = number(second);
        if (a.isPresent() && b.isPresent()) {
            return numbers(a.get(), b.get());
        }
        return plain(first).equals(plain(second)) ? Verdict.SAME : Verdict.DIFFERENT;
    }

    /** Of two numbers the one with fewer decimals may be the other, rounded. */
    private static Verdict numbers(BigDecimal a, BigDecimal b) {
        int decimals = Math.min(a.scale(), b.scale());
        boolean rounded =
                Rounding.halfUp(a.doubleValue(), decimals).compareTo(Rounding.halfUp(b.doubleValue(), decimals)) == 0;
        return a.compareTo(b) == 0 ? Verdict.SAME : rounded ? Verdict.SAME_ROUNDED : Verdict.DIFFERENT;
    }

    private static Optional<BigDecimal> number(String text) {
        var plain = text.replace(',', '.').replace('−', '-');
        return plain.matches("[+-]?\\d+(\\.\\d+)?") ? Optional.of(new BigDecimal(plain)) : Optional.empty();
    }

    /** Without what does not change the meaning: blanks, case, the order of words with commas between them. */
    private static String plain(String text) {
        var even = text.replace('−', '-')
                .replace("+/-", "±")
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\s+", " ")
                .strip();
        return Arrays.stream(even.split(",", -1)).map(String::strip).sorted().collect(Collectors.joining(","));
    }
}
