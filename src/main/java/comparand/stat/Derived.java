package comparand.stat;

import java.util.Optional;
import java.util.function.Function;

/**
 * What a method gives: a value, or the reason why it gives none. A reason is about the numbers at hand; a call that no
 * numbers could answer throws.
 */
public sealed interface Derived<T> {

    /** A value. */
    record Given<T>(T given) implements Derived<T> {
        @Override
        public <R> R fold(Function<T, R> value, Function<Refusal, R> refusal) {
            return value.apply(given);
        }
    }

    /** No value. */
    record Refused<T>(Refusal reason) implements Derived<T> {
        @Override
        public <R> R fold(Function<T, R> value, Function<Refusal, R> refusal) {
            return refusal.apply(reason);
        }
    }

    static <T> Derived<T> of(T value) {
        return new Given<>(value);
    }

    static <T> Derived<T> refused(Refusal reason) {
        return new Refused<>(reason);
    }

    <R> R fold(Function<T, R> value, Function<Refusal, R> refusal);

    default <R> Derived<R> map(Function<T, R> function) {
        return fold(value -> of(function.apply(value)), Derived::refused);
    }

    default <R> Derived<R> flatMap(Function<T, Derived<R>> function) {
        return fold(function, Derived::refused);
    }

    default Optional<T> value() {
        return fold(Optional::of, reason -> Optional.empty());
    }

    default Optional<Refusal> refusal() {
        return fold(value -> Optional.empty(), Optional::of);
    }

    /**
     * The value, for callers who know there is one.
     *
     * @throws IllegalStateException with the reason, if there is none
     */
    default T orElseThrow() {
        return fold(value -> value, reason -> {
            throw new IllegalStateException(reason.words());
        });
    }
}
