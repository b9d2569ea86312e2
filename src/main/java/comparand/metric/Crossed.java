package comparand.metric;

import java.util.Comparator;

/** Where a curve meets a level, or on which side of the points tested it would. Nothing is read off beyond them. */
public sealed interface Crossed {

    /** By x; at one x, what lies below comes before what is met there, and what lies above after it. */
    Comparator<Crossed> ORDER = Comparator.comparingDouble(Crossed::x)
            .thenComparingInt(c -> c instanceof BelowSmallest ? 0 : c instanceof At ? 1 : 2);

    /** The x met, or the x tested next to it. */
    double x();

    /** As a source prints it: nothing, "&lt;" or "&gt;" before the number. */
    String sign();

    /** Met at x. */
    record At(double x) implements Crossed {
        @Override
        public String sign() {
            return "";
        }
    }

    /** Below the level at the smallest x tested already. */
    record BelowSmallest(double x) implements Crossed {
        @Override
        public String sign() {
            return "<";
        }
    }

    /** Still above the level at the largest x tested. */
    record AboveLargest(double x) implements Crossed {
        @Override
        public String sign() {
            return ">";
        }
    }
}
