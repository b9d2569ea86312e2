package comparand.stat;

/**
 * One input of a formula, with its standard uncertainty.
 *
 * @param df degrees of freedom of the uncertainty; infinite where it is known without sampling
 * @param shape how its values are distributed
 */
public record Input(double value, double uncertainty, double df, Shape shape) {

    /** How the values of an input are distributed. */
    public enum Shape {
        NORMAL,
        /** Student's t on the degrees of freedom, scaled: a mean of few readings; JCGM 101:2008, 6.4.9. */
        SCALED_T,
        /** Anywhere within {@code ± √3 u}: a rounded figure; JCGM 101:2008, 6.4.2. */
        RECTANGULAR
    }

    public Input {
        if (!Double.isFinite(value) || !(uncertainty >= 0) || Double.isInfinite(uncertainty) || !(df > 0)) {
            throw new IllegalArgumentException("not an input: %s ± %s, df %s".formatted(value, uncertainty, df));
        }
        if (shape == Shape.SCALED_T && Double.isInfinite(df)) {
            throw new IllegalArgumentException("a scaled t has finite degrees of freedom");
        }
    }

    /** An input whose uncertainty is known. */
    public static Input normal(double value, double uncertainty) {
        return new Input(value, uncertainty, Double.POSITIVE_INFINITY, Shape.NORMAL);
    }

    /** A mean with the standard error of few readings. */
    public static Input sampled(MeanEstimate estimate) {
        return Double.isInfinite(estimate.df())
                ? normal(estimate.mean(), estimate.se())
                : new Input(estimate.mean(), estimate.se(), estimate.df(), Shape.SCALED_T);
    }

    /** A figure that lies anywhere within {@code ± halfWidth}. */
    public static Input rectangular(double value, double halfWidth) {
        return new Input(value, ReadingUncertainty.rectangular(halfWidth), Double.POSITIVE_INFINITY, Shape.RECTANGULAR);
    }
}
