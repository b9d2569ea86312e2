package comparand.demo;

import comparand.stat.Moments;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/**
 * Writes the raw bench files of the demo library. All numbers are invented: seeded deviates are scaled so that the results
 * computed from the rounded raw columns have the mean and SD that the demo scenario prints.
 *
 * <p>Run {@link #main} to write the files anew; a test holds the committed files against this generator.
 */
final class BenchData {

    private static final int UNITS = 6;
    private static final double HUFNER = 1.34;
    private static final double SOLUBILITY = 0.0031;

    /** One device at one flow: pressure drop, oxygen transfer and carbon dioxide transfer. */
    record FlowStep(String device, String parts, String flow, Target pressure, Target oxygen, Target carbonDioxide) {}

    static final List<FlowStep> FLOW_STEPS = List.of(
            step("Q", "OEF", "0.5", "18.2", "1.6", "30.9", "1.1", "24.6", "1.9"),
            step("Q", "OEF", "1.0", "41.5", "2.9", "60.9", "2.1", "44.9", "2.9"),
            step("Q", "OEF", "1.5", "72.4", "4.1", "89.6", "3.3", "62.8", "3.9"),
            step("M", "OE", "0.5", "24.9", "2.2", "30.4", "1.2", "22.4", "1.8"),
            step("M", "OE", "1.0", "58.7", "3.8", "59.8", "2.4", "41.2", "3.1"),
            step("M", "OE", "1.2", "74.6", "4.6", "70.1", "3.0", "47.9", "3.7"),
            step("M", "OE", "1.5", "104.3", "5.9", "85.5", "3.6", "56.3", "4.0"),
            step("S", "OEF", "0.5", "14.1", "1.5", "31.0", "1.0", "25.7", "1.8"),
            step("S", "OEF", "1.0", "33.0", "2.4", "61.3", "1.9", "47.2", "2.8"),
            step("S", "OEF", "1.5", "57.8", "3.5", "91.4", "2.8", "66.0", "3.6"));

    static final Map<String, Target> PERFORMANCE_FACTOR =
            targets("Q", "0.71", "0.02", "M", "0.64", "0.03", "S", "0.75", "0.02");
    static final Map<String, Target> HAEMOLYSIS = targets("Q", "8.4", "2.1", "M", "10.9", "2.6", "S", "7.9", "2.4");
    static final Map<String, Target> BUBBLE_VOLUME =
            targets("Q OEF", "93.1", "2.0", "M OE", "71.5", "5.8", "M OEF", "92.0", "2.6", "S OEF", "88.7", "3.1");

    private BenchData() {}

    private static FlowStep step(String device, String parts, String flow, String... targets) {
        return new FlowStep(
                device,
                parts,
                flow,
                new Target(targets[0], targets[1]),
                new Target(targets[2], targets[3]),
                new Target(targets[4], targets[5]));
    }

    private static Map<String, Target> targets(String... namesMeansSds) {
        var targets = new LinkedHashMap<String, Target>();
        for (int i = 0; i < namesMeansSds.length; i += 3) {
            targets.put(namesMeansSds[i], new Target(namesMeansSds[i + 1], namesMeansSds[i + 2]));
        }
        return targets;
    }

    public static void main(String[] args) throws IOException {
        var folder = Path.of(args.length > 0 ? args[0] : "evidence/studies/bench-norrisgate");
        Files.createDirectories(folder);
        for (var file : files().entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
    }

    /** The raw files by name. */
    static Map<String, String> files() {
        var files = new LinkedHashMap<String, String>();
        files.put("flow-runs.csv", flowRuns());
        files.put("exchanger-runs.csv", exchangerRuns());
        files.put("haemolysis-runs.csv", haemolysisRuns());
        files.put("bubble-runs.csv", bubbleRuns());
        return files;
    }

    private static String flowRuns() {
        var rows = new ArrayList<String>();
        rows.add("unit,device,parts_in_circuit,flow_lpm,p_in_mmhg,p_out_mmhg,hb_gdl,t_blood_c,svo2_pct,pvo2_mmhg,"
                + "sao2_pct,pao2_mmhg,pvco2_mmhg,sweep_lpm,exhaust_co2_pct,t_gas_c,pb_mmhg,remark");
        for (var step : FLOW_STEPS) {
            rows.addAll(flowStep(step));
        }
        return String.join("\n", rows) + "\n";
    }

    private static List<String> flowStep(FlowStep step) {
        for (long seed = 1; ; seed++) {
            var random = new Random(seed * 1_000_003L + (step.device + step.flow).hashCode());
            double q = Double.parseDouble(step.flow);
            var pressure = scaled(random, step.pressure);
            var oxygen = scaled(random, step.oxygen);
            var carbonDioxide = scaled(random, step.carbonDioxide);
            var hb = scaled(random, new Target("12.0", "0.4"));
            var inletPco2 = scaled(random, new Target("45", "3"));
            double outletPressure = meanOutletPressure(q, step.oxygen.meanValue());
            var rows = new ArrayList<String>();
            var seen = new double[3][UNITS];
            for (int i = 0; i < UNITS; i++) {
                double hbRounded = round(hb[i], 1);
                double po2Out = round(outletPressure + 12 * random.nextGaussian(), 0);
                double sOut = round(Math.min(0.999, saturation(po2Out) + 0.0007 * random.nextGaussian()), 3);
                double po2In = round(36 + 1.5 * random.nextGaussian(), 0);
                double sIn =
                        round(sOut - (oxygen[i] / (10 * q) - SOLUBILITY * (po2Out - po2In)) / (HUFNER * hbRounded), 3);
                double pOut = round(180 + 8 * random.nextGaussian(), 1);
                double pIn = round(pOut + pressure[i], 1);
                double tGas = round(21.5 + 0.5 * random.nextGaussian(), 1);
                double pb = round(752 + 3 * random.nextGaussian(), 0);
                double exhaust = round(100 * carbonDioxide[i] / (1000 * q * dryGasFactor(tGas, pb)), 2);
                seen[0][i] = pIn - pOut;
                seen[1][i] = 10 * q * (HUFNER * hbRounded * (sOut - sIn) + SOLUBILITY * (po2Out - po2In));
                seen[2][i] = 1000 * q * exhaust / 100 * dryGasFactor(tGas, pb);
                boolean twice = step.device.equals("Q") && step.flow.equals("1.0") && i == 3;
                for (int repeat = 0; repeat < (twice ? 2 : 1); repeat++) {
                    double shift = twice ? (repeat == 0 ? 0.6 : -0.6) : 0;
                    rows.add(String.join(
                            ",",
                            "%s-%02d".formatted(step.device, i + 1),
                            step.device,
                            step.parts,
                            step.flow,
                            text(pIn + shift, 1),
                            text(pOut, 1),
                            text(hbRounded, 1),
                            text(37 + 0.1 * random.nextGaussian(), 1),
                            text(100 * sIn, 1),
                            text(po2In, 0),
                            text(100 * sOut, 1),
                            text(po2Out, 0),
                            text(inletPco2[i], 0),
                            step.flow,
                            text(exhaust, 2),
                            text(tGas, 1),
                            text(pb, 0),
                            repeat == 1 ? "repeated: recorder had stopped" : ""));
                }
            }
            if (step.pressure.isMetBy(seen[0]) && step.oxygen.isMetBy(seen[1]) && step.carbonDioxide.isMetBy(seen[2])) {
                return rows;
            }
        }
    }

    /** The outlet oxygen pressure at which blood of 12 g/dL and 65 % takes up the given amount. */
    private static double meanOutletPressure(double q, double uptake) {
        double low = 60;
        double high = 600;
        for (int i = 0; i < 60; i++) {
            double p = (low + high) / 2;
            double taken = 10 * q * (HUFNER * 12 * (saturation(p) - 0.65) + SOLUBILITY * (p - 36));
            if (taken < uptake) {
                low = p;
            } else {
                high = p;
            }
        }
        return (low + high) / 2;
    }

    /** Severinghaus, J Appl Physiol 1979;46:599-602, equation 1; near saturation it serves for bovine blood as well. */
    private static double saturation(double p) {
        return 1 / (23400 / (p * p * p + 150 * p) + 1);
    }

    private static double dryGasFactor(double t, double pb) {
        return pb / 760 * 273.15 / (273.15 + t);
    }

    private static String exchangerRuns() {
        var rows = new ArrayList<String>();
        rows.add("unit,device,flow_lpm,water_lpm,t_blood_in_c,t_blood_out_c,t_water_in_c");
        for (var target : PERFORMANCE_FACTOR.entrySet()) {
            var factors = searched(target.getKey() + " exchanger", target.getValue(), f -> round(10 * f, 1) / 10);
            for (int i = 0; i < UNITS; i++) {
                rows.add("%s-%02d,%s,1.0,10.0,30.0,%s,40.0"
                        .formatted(target.getKey(), i + 1, target.getKey(), text(30 + 10 * factors[i], 1)));
            }
        }
        return String.join("\n", rows) + "\n";
    }

    private static String haemolysisRuns() {
        var rows = new ArrayList<String>();
        rows.add("unit,device,flow_lpm,hours,loop_ml,hct_pct,fhb_start_mgdl,fhb_end_mgdl");
        double perRise = 0.450 * 0.64 * 100 / 360 * 10;
        for (var target : HAEMOLYSIS.entrySet()) {
            var index =
                    searched(target.getKey() + " haemolysis", target.getValue(), x -> round(x / perRise, 1) * perRise);
            var random = new Random(31L * target.getKey().hashCode());
            for (int i = 0; i < UNITS; i++) {
                double start = round(4 + 0.6 * random.nextGaussian(), 1);
                rows.add("%s-%02d,%s,1.0,6.0,450,36,%s,%s"
                        .formatted(
                                target.getKey(),
                                i + 1,
                                target.getKey(),
                                text(start, 1),
                                text(start + index[i] / perRise, 1)));
            }
        }
        return String.join("\n", rows) + "\n";
    }

    private static String bubbleRuns() {
        var rows = new ArrayList<String>();
        rows.add("unit,device,parts_between_detectors,flow_lpm,volume_up_nl,volume_down_nl");
        for (var target : BUBBLE_VOLUME.entrySet()) {
            var names = target.getKey().split(" ", -1);
            var random = new Random(17L * target.getKey().hashCode());
            var up = new double[UNITS];
            for (int i = 0; i < UNITS; i++) {
                up[i] = round(820 + 90 * random.nextGaussian(), 0);
            }
            var index = new int[1];
            var reductions = searched(
                    target.getKey() + " bubbles",
                    target.getValue(),
                    r -> 100 * (1 - round(up[index[0]++ % UNITS] * (1 - r / 100), 0) / up[(index[0] - 1) % UNITS]));
            for (int i = 0; i < UNITS; i++) {
                rows.add("%s-%02d,%s,%s,1.0,%s,%s"
                        .formatted(
                                names[0],
                                i + 1,
                                names[0],
                                names[1],
                                text(up[i], 0),
                                text(up[i] * (1 - reductions[i] / 100), 0)));
            }
        }
        return String.join("\n", rows) + "\n";
    }

    /** Six results that, after the rounding of their raw columns, have the target's mean and SD. */
    private static double[] searched(String name, Target target, DoubleUnaryOperator asRecorded) {
        for (long seed = 1; ; seed++) {
            var wanted = scaled(new Random(seed * 1_000_003L + name.hashCode()), target);
            var recorded = Arrays.stream(wanted).map(asRecorded).toArray();
            if (target.isMetBy(recorded)) {
                return recorded;
            }
        }
    }

    /** Six deviates with exactly the target's mean and SD. */
    private static double[] scaled(Random random, Target target) {
        var raw = new double[UNITS];
        for (int i = 0; i < UNITS; i++) {
            raw[i] = random.nextGaussian();
        }
        var moments = Moments.of(raw);
        return Arrays.stream(raw)
                .map(x -> target.meanValue() + (x - moments.mean()) / moments.sd() * target.sdValue())
                .toArray();
    }

    private static double round(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .doubleValue();
    }

    private static String text(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", round(value, decimals));
    }
}
