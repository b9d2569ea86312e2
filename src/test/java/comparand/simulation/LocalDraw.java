package comparand.simulation;

import comparand.calibration.Draw;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Draws what is measured at home. */
final class LocalDraw {

    private static final List<List<Double>> STEPS = List.of(List.of(4.0, 5.0, 6.0), List.of(4.0, 6.0));
    private static final double[] BETWEEN = {0, 0.25, 0.5, 0.75, 1};

    private final World world;
    private final Draw draw;
    private final int rowsEach;
    private final OptionalDouble againstPresent;
    private final List<LocalRow> rows = new ArrayList<>();

    private LocalDraw(World world, Draw draw) {
        this.world = world;
        this.draw = draw;
        boolean repeated = draw.uniform(0, 1) < 0.4;
        this.rowsEach = !repeated ? 1 : world.clinical() ? draw.whole(3, 8) : draw.whole(2, 4);
        this.againstPresent =
                draw.whole(0, 1) == 1 ? OptionalDouble.of(world.difference(draw)) : OptionalDouble.empty();
    }

    static LocalStudy of(World world, Draw draw) {
        var local = new LocalDraw(world, draw);
        return world.clinical() ? local.hospitals() : local.bench();
    }

    private LocalStudy bench() {
        var steps = STEPS.get(draw.whole(0, 1));
        units("E", false, steps);
        if (againstPresent.isPresent()) {
            units("P", true, steps);
        }
        return new LocalStudy(steps, 0, 0, rowsEach > 1, againstPresent, true, rows);
    }

    private void units(String prefix, boolean present, List<Double> steps) {
        int count = draw.whole(4, 8);
        for (int i = 1; i <= count; i++) {
            double own = draw.normal(0, world.memberSd());
            for (double step : steps) {
                rows(prefix + "-" + i, "", present, world.usual().atFlow(step), own);
            }
        }
    }

    /** Cases of both devices in one hospital. */
    private record Use(int own, int present) {}

    private LocalStudy hospitals() {
        int count = draw.uniform(0, 1) < 0.4 ? 1 : draw.whole(2, 4);
        double between = count == 1 ? 0 : BETWEEN[draw.whole(0, BETWEEN.length - 1)];
        boolean alike = draw.whole(0, 1) == 0;
        var uses = new ArrayList<Use>();
        for (int h = 0; h < count; h++) {
            uses.add(count == 1 ? new Use(draw.whole(10, 30), draw.whole(8, 20)) : use(alike));
        }
        var effects = effects(uses, between * world.within());
        for (int h = 0; h < count; h++) {
            var name = "Hospital " + (char) ('A' + h);
            cases(name, false, uses.get(h).own, effects[h]);
            if (againstPresent.isPresent()) {
                cases(name, true, uses.get(h).present, effects[h]);
            }
        }
        return new LocalStudy(List.of(), count, between, rowsEach > 1, againstPresent, count == 1 || alike, rows);
    }

    /** Differing use: one device often and the other seldom, sometimes never the present one. */
    private Use use(boolean alike) {
        if (alike) {
            return new Use(draw.whole(5, 9), draw.whole(5, 9));
        }
        return draw.whole(0, 1) == 0
                ? new Use(draw.whole(8, 12), draw.whole(0, 3))
                : new Use(draw.whole(3, 5), draw.whole(8, 12));
    }

    /**
     * What each hospital adds. One or two hospitals speak for themselves only: what they add is taken off their mean over
     * cases. Three and more speak for all hospitals like them: theirs are drawn around none.
     */
    private double[] effects(List<Use> uses, double sd) {
        var effects = draw.normals(uses.size(), 0, sd);
        if (uses.size() <= 2) {
            double sum = 0;
            int all = 0;
            for (int h = 0; h < effects.length; h++) {
                sum += uses.get(h).own * effects[h];
                all += uses.get(h).own;
            }
            for (int h = 0; h < effects.length; h++) {
                effects[h] -= sum / all;
            }
        }
        return effects;
    }

    private void cases(String hospital, boolean present, int count, double effect) {
        for (int i = 1; i <= count; i++) {
            var id = hospital.charAt(hospital.length() - 1) + (present ? "P" : "E") + "-" + i;
            rows(id, hospital, present, world.someone(draw, world.usual()), effect + draw.normal(0, world.memberSd()));
        }
    }

    private void rows(String member, String hospital, boolean present, Setting around, double own) {
        double device = present ? -againstPresent.orElse(0) : 0;
        for (int r = 1; r <= rowsEach; r++) {
            var at = world.clinical() ? around.atFlow(draw.normal(around.flow(), 0.03)) : world.someone(draw, around);
            double drop = world.law().drop(at) + device + own + draw.normal(0, world.rowSd());
            rows.add(new LocalRow(member, r, hospital, present, at, drop));
        }
    }
}
