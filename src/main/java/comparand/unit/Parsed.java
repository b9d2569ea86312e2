package comparand.unit;

import static java.util.Objects.requireNonNull;

import java.util.function.Function;

/** What became of reading a piece of text: the value, or where and why it could not be read. */
public sealed interface Parsed<T> {

    <R> R fold(Function<? super T, R> ok, Function<Fault<T>, R> fault);

    static <T> Parsed<T> ok(T value) {
        return new Ok<>(value);
    }

    static <T> Parsed<T> fault(int at, int length, String problem, String fix) {
        return new Fault<>(at, length, problem, fix);
    }

    default <R> Parsed<R> then(Function<? super T, Parsed<R>> next) {
        return fold(next, fault -> new Fault<>(fault.at, fault.length, fault.problem, fault.fix));
    }

    default <R> Parsed<R> map(Function<? super T, ? extends R> f) {
        return then(value -> new Ok<>(f.apply(value)));
    }

    /** The same result for a text that starts {@code offset} characters further on. */
    default Parsed<T> shifted(int offset) {
        return fold(Ok::new, f -> new Fault<>(f.at + offset, f.length, f.problem, f.fix));
    }

    /**
     * The value of a text that this program itself wrote.
     *
     * @throws IllegalArgumentException if it cannot be read: the program is wrong, not the user
     */
    default T orThrow() {
        return fold(value -> value, fault -> {
            throw new IllegalArgumentException(fault.problem);
        });
    }

    /** The value that was read. */
    record Ok<T>(T value) implements Parsed<T> {
        public Ok {
            requireNonNull(value, "value");
        }

        @Override
        public <R> R fold(Function<? super T, R> ok, Function<Fault<T>, R> fault) {
            return ok.apply(value);
        }
    }

    /**
     * Why the text could not be read.
     *
     * @param at where the offending characters start, counted from 0 within the text
     * @param length how many there are, at least 1
     * @param problem one sentence without a full stop
     * @param fix what to write instead
     */
    record Fault<T>(int at, int length, String problem, String fix) implements Parsed<T> {
        public Fault {
            if (at < 0) {
                throw new IllegalArgumentException("a fault starts inside its text, got " + at);
            }
            length = Math.max(1, length);
        }

        @Override
        public <R> R fold(Function<? super T, R> ok, Function<Fault<T>, R> fault) {
            return fault.apply(this);
        }
    }
}
