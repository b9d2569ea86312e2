package comparand.metric;

/** A formula as code. Each input arrives in the unit its {@link Input} names; the result is in the metric's unit. */
@FunctionalInterface
public interface Computation {

    double of(Inputs in);
}
