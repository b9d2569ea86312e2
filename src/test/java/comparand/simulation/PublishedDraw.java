package comparand.simulation;

import comparand.calibration.Draw;
import java.util.ArrayList;
import java.util.List;

/** Draws the sources of one library. */
final class PublishedDraw {

    private static final int SOURCES = 6;
    private static final int FEWEST_FOR_QUARTILES = 8;
    /** Another flow that can be met is met in three ways, so it is drawn twice as often. */
    private static final List<Unlike> UNLIKE = List.of(
            Unlike.WITHIN_TOLERANCE,
            Unlike.FLOW_BETWEEN,
            Unlike.FLOW_BETWEEN,
            Unlike.FLOW_BEYOND,
            Unlike.HAEMOGLOBIN,
            Unlike.TEMPERATURE,
            Unlike.LIQUID,
            Unlike.PARTS,
            Unlike.SILENT);

    private static final Silence[] SILENCES = {Silence.FLOW, Silence.HAEMOGLOBIN, Silence.PARTS};
    private static final Print[] UNSOUND = {Print.UNEXPLAINED, Print.WITHOUT_NUMBER, Print.FIGURE, Print.LIMIT};

    private final World world;
    private final LocalStudy local;
    private final Draw draw;
    private final List<Published> values = new ArrayList<>();

    private PublishedDraw(World world, LocalStudy local, Draw draw) {
        this.world = world;
        this.local = local;
        this.draw = draw;
    }

    static List<Published> of(World world, LocalStudy local, Draw draw) {
        var published = new PublishedDraw(world, local, draw);
        for (int s = 1; s <= SOURCES; s++) {
            published.source("source-" + s);
        }
        return published.values;
    }

    /** Three sources in ten are sound; three are unlike, a quarter print too little, the rest do both. */
    private void source(String name) {
        double kind = draw.uniform(0, 1);
        boolean conditions = (kind >= 0.3 && kind < 0.6) || kind >= 0.85;
        boolean printing = kind >= 0.6;
        var unlike = conditions ? UNLIKE.get(draw.whole(0, UNLIKE.size() - 1)) : Unlike.ALIKE;
        var print = printing ? UNSOUND[draw.whole(0, UNSOUND.length - 1)] : sound();
        double difference = world.difference(draw);
        if (unlike == Unlike.SILENT) {
            silent(name, print, difference);
            return;
        }
        var at = setting(unlike);
        value(name, at, Silence.NONE, unlike, print, difference);
        // on the bench, what lies below the middle step comes with a second point above it
        if (unlike == Unlike.FLOW_BETWEEN && local.steps().size() == 3 && at.flow() < 5) {
            value(name, at.atFlow(between(5.3, 5.65)), Silence.NONE, unlike, print, difference);
        }
    }

    private Print sound() {
        double form = draw.uniform(0, 1);
        return form < 0.5 ? Print.SD : form < 0.7 ? Print.SE : form < 0.85 ? Print.INTERVAL : Print.QUARTILES;
    }

    private Setting home() {
        return local.steps().isEmpty()
                ? world.usual()
                : world.usual()
                        .atFlow(local.steps().get(draw.whole(0, local.steps().size() - 1)));
    }

    private Setting setting(Unlike unlike) {
        var home = home();
        return switch (unlike) {
            case ALIKE, SILENT -> home;
            case WITHIN_TOLERANCE ->
                draw.whole(0, 1) == 0
                        ? home.atFlow(rounded(home.flow() * (1 + sign() * draw.uniform(0.02, 0.045))))
                        : home.atHaemoglobin(tenth(home.haemoglobin() + sign() * draw.uniform(0.5, 0.9)));
            case FLOW_BETWEEN -> home.atFlow(flowBetween());
            case FLOW_BEYOND -> home.atFlow(flowBeyond());
            case HAEMOGLOBIN -> home.atHaemoglobin(otherHaemoglobin(home));
            case TEMPERATURE -> home.atTemperature(tenth(draw.uniform(28, 33)));
            case LIQUID -> home.inWater();
            case PARTS -> home.acrossFilter();
        };
    }

    private double flowBetween() {
        if (world.clinical()) {
            return rounded(5 + sign() * draw.uniform(0.3, 0.5));
        }
        return local.steps().size() == 2
                ? between(4.3, 5.6)
                : draw.whole(0, 1) == 0 ? between(4.25, 4.7) : between(5.3, 5.65);
    }

    private double flowBeyond() {
        return world.clinical()
                ? rounded(5 + sign() * draw.uniform(1.2, 1.8))
                : draw.whole(0, 1) == 0 ? between(2.8, 3.4) : between(6.8, 7.4);
    }

    /** At home the blood of patients is thin already. */
    private double otherHaemoglobin(Setting home) {
        return tenth(home.haemoglobin() + (world.clinical() ? 1 : sign()) * draw.uniform(2, 4));
    }

    /** The source leaves one thing out; in half of them it was as at home. */
    private void silent(String name, Print print, double difference) {
        var silence = SILENCES[draw.whole(0, SILENCES.length - 1)];
        boolean alike = draw.whole(0, 1) == 0;
        var home = home();
        var at = alike
                ? home
                : switch (silence) {
                    case NONE -> home;
                    case FLOW -> home.atFlow(flowBeyond());
                    case HAEMOGLOBIN -> home.atHaemoglobin(otherHaemoglobin(home));
                    case PARTS -> home.acrossFilter();
                };
        value(name, at, silence, Unlike.SILENT, print, difference, !alike);
    }

    private void value(String source, Setting at, Silence silence, Unlike unlike, Print print, double difference) {
        boolean other = switch (unlike) {
            case ALIKE, WITHIN_TOLERANCE, SILENT -> false;
            case FLOW_BETWEEN, FLOW_BEYOND, HAEMOGLOBIN, TEMPERATURE, LIQUID, PARTS -> true;
        };
        value(source, at, silence, unlike, print, difference, other);
    }

    private void value(
            String source,
            Setting at,
            Silence silence,
            Unlike unlike,
            Print print,
            double difference,
            boolean trulyOther) {
        double mean = world.law().drop(at) - difference;
        int n = world.clinical() ? draw.whole(8, 50) : draw.whole(4, 10);
        double scatter = draw.uniform(0.8, 1.3);
        var results = new ArrayList<Double>();
        for (int i = 0; i < n; i++) {
            results.add(world.law().drop(world.someone(draw, at))
                    - difference
                    + draw.normal(0, scatter * world.memberSd())
                    + draw.normal(0, world.rowSd()));
        }
        var sample = new PublishedSample(results, world.clinical(), draw.uniform(0, 1) < 0.25);
        var how = print == Print.QUARTILES && n < FEWEST_FOR_QUARTILES ? Print.SD : print;
        // what a maker promises lies above the mean, at the next five
        double limit = 5 * Math.ceil((mean + draw.uniform(0.5, 2) * world.memberSd()) / 5);
        values.add(new Published(
                "V" + (values.size() + 1),
                source,
                at,
                silence,
                unlike,
                trulyOther,
                how,
                mean,
                difference,
                limit,
                sample.form(how, draw, limit)));
    }

    private double sign() {
        return draw.whole(0, 1) == 0 ? 1 : -1;
    }

    private double between(double low, double high) {
        return rounded(draw.uniform(low, high));
    }

    private static double rounded(double flow) {
        return Math.round(flow * 100) / 100.0;
    }

    private static double tenth(double amount) {
        return Math.round(amount * 10) / 10.0;
    }
}
