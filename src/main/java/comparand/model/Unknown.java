package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.metric.Metric;
import comparand.model.library.SourceRecord;
import comparand.model.library.UnknownRecord;
import java.util.List;
import java.util.Optional;

/** What is not known after all comparisons, and would have to be measured or asked for. A closed set. */
public sealed interface Unknown {

    <R> R fold(Cases<R> cases);

    /** Unique in a run, and the same from run to run as long as the gap is the same. */
    String id();

    /** One method per kind. */
    interface Cases<R> {
        R open(Open unknown);

        R declared(Declared unknown);

        R unmeasured(Unmeasured unknown);

        R asked(Asked unknown);

        R unlike(Unlike unknown);

        R unpublished(Unpublished unknown);

        R paidFor(PaidFor unknown);
    }

    /**
     * A comparison that leaves the direction open, or whether the difference reaches the margin.
     *
     * @param planned how many results would settle it; empty where no margin and no difference to be found was set, or no
     *     spread is known
     */
    record Open(Comparison comparison, Optional<Planned> planned) implements Unknown {
        public Open {
            requireNonNull(comparison, "comparison");
            requireNonNull(planned, "planned");
        }

        @Override
        public String id() {
            return "open: " + comparison.pairing().id();
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.open(this);
        }
    }

    /**
     * What the dossier says that no metric tests.
     *
     * @param number its place in the dossier, from 1
     */
    record Declared(UnknownRecord says, int number) implements Unknown {
        public Declared {
            requireNonNull(says, "says");
        }

        @Override
        public String id() {
            return "declared: " + number;
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.declared(this);
        }
    }

    /**
     * A metric that was asked for and of which there are no local results of a device, or too few to say anything.
     *
     * @param have the results there are, of several steps those with the most; empty if there are none
     */
    record Unmeasured(
            Metric metric, Optional<Margin> margin, String device, Optional<Comparand> have, Optional<Planned> planned)
            implements Unknown {
        public Unmeasured {
            requireNonNull(metric, "metric");
            requireNonNull(margin, "margin");
            requireNonNull(device, "device");
            requireNonNull(have, "have");
            requireNonNull(planned, "planned");
        }

        @Override
        public String id() {
            return "unmeasured: " + have.map(Comparand::id).orElseGet(() -> metric.id() + ", " + device);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.unmeasured(this);
        }
    }

    /** One letter: what a source leaves out about the values of one device. */
    record Asked(SourceRecord source, String device, List<Metric> metrics, List<Missing> missing) implements Unknown {
        public Asked {
            requireNonNull(source, "source");
            requireNonNull(device, "device");
            metrics = List.copyOf(metrics);
            missing = List.copyOf(missing);
        }

        @Override
        public String id() {
            return "asked: " + source.id() + ", " + device;
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.asked(this);
        }
    }

    /**
     * Pairs that are shown and not compared because something differs, or because our side did not record it.
     *
     * @param pairs of one metric and device against one other side, at least one
     */
    record Unlike(List<Comparison> pairs) implements Unknown {
        public Unlike {
            pairs = List.copyOf(pairs);
            if (pairs.isEmpty()) {
                throw new IllegalArgumentException("there is a pair that differs");
            }
        }

        public Comparison first() {
            return pairs.get(0);
        }

        @Override
        public String id() {
            return "unlike: " + first().pairing().id();
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.unlike(this);
        }
    }

    /** Metrics of which no source in the library says anything for a device. */
    record Unpublished(String device, List<Metric> metrics) implements Unknown {
        public Unpublished {
            requireNonNull(device, "device");
            metrics = List.copyOf(metrics);
        }

        @Override
        public String id() {
            return "unpublished: " + device;
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.unpublished(this);
        }
    }

    /**
     * Metrics of a device of which all that is published was paid for by a maker.
     *
     * @param makersOwn whether the sources are documents of the maker; else they are studies a maker paid for
     */
    record PaidFor(String device, boolean makersOwn, List<SourceRecord> sources, List<Metric> metrics)
            implements Unknown {
        public PaidFor {
            requireNonNull(device, "device");
            sources = List.copyOf(sources);
            metrics = List.copyOf(metrics);
        }

        @Override
        public String id() {
            return "paid-for: " + device + ", " + (makersOwn ? "documents" : "studies");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.paidFor(this);
        }
    }
}
