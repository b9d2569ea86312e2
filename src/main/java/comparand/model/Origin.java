package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.model.library.SourceRecord;
import comparand.model.library.StudyRecord;
import comparand.model.library.ValueRecord;
import java.util.List;
import java.util.function.Function;

/** Where a comparand comes from. */
public sealed interface Origin {

    <R> R fold(Function<Published, R> published, Function<Local, R> local);

    default boolean isLocal() {
        return this instanceof Local;
    }

    /**
     * A source.
     *
     * @param values the value, or the two neighbours it was read off between
     */
    record Published(SourceRecord source, List<ValueRecord> values) implements Origin {
        public Published {
            requireNonNull(source, "source");
            values = List.copyOf(values);
            if (values.isEmpty()) {
                throw new IllegalArgumentException("a published comparand has a value");
            }
        }

        @Override
        public <R> R fold(Function<Published, R> published, Function<Local, R> local) {
            return published.apply(this);
        }
    }

    /**
     * A local study.
     *
     * @param file the raw data file, as findings name it
     * @param group what sets this group apart, such as {@code 1.0 L/min}; empty if nothing does
     */
    record Local(StudyRecord study, String file, String group, LocalScope scope) implements Origin {
        public Local {
            requireNonNull(scope, "scope");
            requireNonNull(study, "study");
            requireNonNull(file, "file");
            requireNonNull(group, "group");
        }

        @Override
        public <R> R fold(Function<Published, R> published, Function<Local, R> local) {
            return local.apply(this);
        }
    }
}
