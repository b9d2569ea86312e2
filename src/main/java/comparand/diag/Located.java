package comparand.diag;

import static java.util.Objects.requireNonNull;

import java.util.function.Function;

/** A value and the place in the user's file it was read from. */
public record Located<T>(T value, Span span) {

    public Located {
        requireNonNull(value, "value");
        requireNonNull(span, "span");
    }

    public <R> Located<R> map(Function<? super T, ? extends R> f) {
        return new Located<>(f.apply(value), span);
    }

    @Override
    public String toString() {
        return value + " at " + span;
    }
}
