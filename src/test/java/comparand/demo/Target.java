package comparand.demo;

import comparand.stat.Moments;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** A mean and an SD as the scenario prints them. */
record Target(String mean, String sd) {
    double meanValue() {
        return Double.parseDouble(mean);
    }

    double sdValue() {
        return Double.parseDouble(sd);
    }

    boolean isMetBy(double... results) {
        var moments = Moments.of(results);
        return isTight(moments.mean(), mean) && isTight(moments.sd(), sd);
    }

    /** Right to a tenth of the printed digit, so that differences of two results come out as printed as well. */
    private static boolean isTight(double value, String printed) {
        return rounded(value, printed).equals(printed)
                && Math.abs(value - Double.parseDouble(printed)) <= 0.11 * Math.pow(10, -decimals(printed));
    }

    private static int decimals(String printed) {
        return printed.contains(".") ? printed.length() - printed.indexOf('.') - 1 : 0;
    }

    private static String rounded(double value, String like) {
        return BigDecimal.valueOf(value)
                .setScale(decimals(like), RoundingMode.HALF_UP)
                .toPlainString();
    }
}
