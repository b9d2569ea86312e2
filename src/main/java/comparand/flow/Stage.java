package comparand.flow;

/**
 * One step of the pipeline: a pure function from one model type to the next.
 *
 * <p>A stage reads no clock, environment or network, keeps no state between runs, and says what it found in its
 * outcome. Only the reader opens files, and only the writers make bytes.
 */
@FunctionalInterface
public interface Stage<I, O> {

    Outcome<O> run(I input);

    default <P> Stage<I, P> then(Stage<? super O, P> next) {
        return input -> run(input).then(next::run);
    }
}
