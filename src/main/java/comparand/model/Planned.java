package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.model.library.SampleSize;
import comparand.model.library.SampleUnit;
import java.util.List;
import java.util.Optional;

/**
 * How many results would settle an open answer, and what these numbers rest on. It looks ahead only: no power is given for
 * what was done.
 *
 * @param unit what is counted
 * @param ours how many there are on our side; empty if none
 * @param theirs how many there are on the other; empty for a figure without number
 * @param power the probability with which a difference to be found is found
 */
public record Planned(
        SampleUnit unit,
        Groups groups,
        Optional<SampleSize> ours,
        Optional<SampleSize> theirs,
        PlanningSd sd,
        List<AssumedSd> assumed,
        double power,
        List<PlanAim> aims,
        Reach reach) {

    /** The two-sided level of every test that is planned. */
    public static final double ALPHA = 0.05;

    /** What would be measured. */
    public enum Groups {
        /** Both devices, in groups of one size. */
        EACH_OF_TWO,
        /** Ours alone; the published mean keeps the uncertainty it has. */
        AGAINST_PUBLISHED,
        /** Ours alone; the published figure is taken as exact but for its rounding. */
        AGAINST_FIGURE
    }

    /**
     * For which hospitals the numbers hold.
     *
     * @param casesEach how many cases of a device a hospital brings now, on average; 0 unless across hospitals
     * @param tau standard deviation between hospitals; 0 unless across hospitals
     */
    public record Reach(Kind kind, int casesEach, double tau) {

        /** How far the numbers reach. */
        public enum Kind {
            /** Results of one laboratory or hospital, or without one. */
            ONE_PLACE,
            /** From fewer than three hospitals: nothing is known of how much hospitals differ. */
            SAME_HOSPITALS,
            /** The spread between three hospitals or more is allowed for. */
            ACROSS_HOSPITALS
        }

        public static final Reach ONE_PLACE = new Reach(Kind.ONE_PLACE, 0, 0);
        public static final Reach SAME_HOSPITALS = new Reach(Kind.SAME_HOSPITALS, 0, 0);

        public Reach {
            requireNonNull(kind, "kind");
        }
    }

    public Planned {
        requireNonNull(unit, "unit");
        requireNonNull(groups, "groups");
        requireNonNull(ours, "ours");
        requireNonNull(theirs, "theirs");
        requireNonNull(sd, "sd");
        requireNonNull(reach, "reach");
        assumed = List.copyOf(assumed);
        aims = List.copyOf(aims);
        for (var aim : aims) {
            if (aim.results().size() != assumed.size()) {
                throw new IllegalArgumentException("a number for every standard deviation assumed");
            }
        }
    }
}
