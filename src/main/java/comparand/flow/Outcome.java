package comparand.flow;

import comparand.diag.Diagnostic;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What a stage hands on: a value with the findings made on the way, or the findings that stopped it.
 *
 * <p>Inside one stage every fault is collected; between stages the first STOP ends the run. So an author sees all the
 * faults of a kind at once, and never one that only follows from another.
 */
public sealed interface Outcome<T> {

    List<Diagnostic> findings();

    <R> R fold(BiFunction<? super T, List<Diagnostic>, R> done, Function<List<Diagnostic>, R> stopped);

    /** The value, if no finding is a STOP; else the findings alone. */
    static <T> Outcome<T> of(T value, List<Diagnostic> findings) {
        return findings.stream().anyMatch(Diagnostic::stops) ? new Stopped<>(findings) : new Done<>(value, findings);
    }

    static <T> Outcome<T> of(T value) {
        return new Done<>(value, List.of());
    }

    static <T> Outcome<T> stopped(List<Diagnostic> findings) {
        return new Stopped<>(findings);
    }

    /** Goes on with the value, keeping what was said so far. */
    default <R> Outcome<R> then(Function<? super T, Outcome<R>> next) {
        return fold((value, said) -> next.apply(value).after(said), Stopped::new);
    }

    default <R> Outcome<R> map(Function<? super T, ? extends R> f) {
        return fold((value, said) -> new Done<>(f.apply(value), said), Stopped::new);
    }

    /** All values in their order, or the findings of all that stopped, together. */
    static <T> Outcome<List<T>> all(List<Outcome<T>> outcomes) {
        var values = new ArrayList<T>();
        var said = new ArrayList<Diagnostic>();
        for (var outcome : outcomes) {
            said.addAll(outcome.findings());
            outcome.fold((value, findings) -> values.add(value), findings -> false);
        }
        return of(List.copyOf(values), said);
    }

    private Outcome<T> after(List<Diagnostic> earlier) {
        return fold(
                (value, said) -> new Done<>(value, joined(earlier, said)),
                said -> new Stopped<>(joined(earlier, said)));
    }

    private static List<Diagnostic> joined(List<Diagnostic> first, List<Diagnostic> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }

    /** A value, and findings of which none is a STOP. */
    record Done<T>(T value, List<Diagnostic> findings) implements Outcome<T> {
        public Done {
            findings = List.copyOf(findings);
            if (findings.stream().anyMatch(Diagnostic::stops)) {
                throw new IllegalArgumentException("an outcome with a STOP has no value");
            }
        }

        @Override
        public <R> R fold(BiFunction<? super T, List<Diagnostic>, R> done, Function<List<Diagnostic>, R> stopped) {
            return done.apply(value, findings);
        }
    }

    /** No value: at least one finding is a STOP. */
    record Stopped<T>(List<Diagnostic> findings) implements Outcome<T> {
        public Stopped {
            findings = List.copyOf(findings);
            if (findings.stream().noneMatch(Diagnostic::stops)) {
                throw new IllegalArgumentException("an outcome stops for a STOP, and there is none");
            }
        }

        @Override
        public <R> R fold(BiFunction<? super T, List<Diagnostic>, R> done, Function<List<Diagnostic>, R> stopped) {
            return stopped.apply(findings);
        }
    }
}
