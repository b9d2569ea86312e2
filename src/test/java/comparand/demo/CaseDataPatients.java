package comparand.demo;

import static comparand.demo.CaseDataDevice.MIRROWEN;
import static comparand.demo.CaseDataDevice.QUILLANE;
import static comparand.demo.CaseDataDevice.SKARROW;
import static comparand.demo.CaseDataHospital.LAKE_FERRAN;
import static comparand.demo.CaseDataHospital.NORRISGATE;
import static comparand.demo.CaseDataHospital.ST_ALDWYN;
import static comparand.demo.CaseDataHospital.round;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;

/**
 * Draws the patients of the three hospitals, 3 to 12 kg. A hospital changes its device once, when its stock of the first is
 * used up, so the order of the cases is the order of the devices.
 */
final class CaseDataPatients {

    /**
     * The cases of one device in one hospital.
     *
     * @param lightest kg, and {@code heaviest}
     * @param infants how many of them weigh less than 4 kg, drawn beside the others; 0 leaves it to chance
     * @param aboveLabel how many are perfused faster than the device's label allows
     * @param pressure pressure drop at full flow, mmHg, as the scenario prints it
     */
    record Group(
            CaseDataHospital hospital,
            CaseDataDevice device,
            int cases,
            double lightest,
            double heaviest,
            int infants,
            int aboveLabel,
            Target pressure) {}

    static final List<Group> GROUPS = List.of(
            new Group(NORRISGATE, QUILLANE, 14, 3.4, 11.0, 0, 0, new Target("58", "12")),
            new Group(NORRISGATE, MIRROWEN, 10, 3.6, 9.8, 0, 2, new Target("71", "13")),
            new Group(ST_ALDWYN, QUILLANE, 11, 3.4, 11.0, 0, 0, new Target("60", "13")),
            new Group(ST_ALDWYN, SKARROW, 6, 5.8, 10.8, 2, 0, new Target("52", "12")),
            new Group(LAKE_FERRAN, MIRROWEN, 7, 3.6, 9.6, 0, 1, new Target("70", "14")),
            new Group(LAKE_FERRAN, SKARROW, 6, 5.4, 10.6, 0, 0, new Target("55", "11")));

    /** Two cases that no result counts: one whose device nobody wrote down, one that went on to life support. */
    static final List<Group> EXTRAS = List.of(
            new Group(ST_ALDWYN, QUILLANE, 1, 6.0, 8.0, 0, 0, new Target("60", "13")),
            new Group(LAKE_FERRAN, MIRROWEN, 1, 5.0, 7.0, 0, 0, new Target("70", "14")));

    /** The cases of the weeks after: those of one hospital that a second month adds. */
    static final Group LATER = new Group(ST_ALDWYN, SKARROW, 4, 4.6, 10.2, 0, 0, new Target("52", "12"));

    private static final int LAST_DAY = 236;
    private static final int LAST_DAY_LATER = 262;

    /** Months at a weight, of children with a heart defect: lighter than their age. */
    private static final double[] KILOGRAMS = {3, 4, 5, 6, 7, 8, 9, 10, 11, 12};

    private static final double[] MONTHS = {0.2, 1.5, 2.8, 4.5, 7, 10, 14, 19, 25, 32};

    private final Map<CaseDataHospital, Integer> numbered = new EnumMap<>(CaseDataHospital.class);

    private CaseDataPatients() {}

    /** Every patient, the two extras last. */
    static List<CaseDataPatient> drawn() {
        var drawing = new CaseDataPatients();
        var patients = new ArrayList<CaseDataPatient>();
        GROUPS.forEach(g -> patients.addAll(drawing.group(g)));
        EXTRAS.forEach(g -> patients.addAll(drawing.group(g)));
        return patients;
    }

    /** The patients of {@link #LATER}, numbered behind the others of their hospital, on days of their own. */
    static List<CaseDataPatient> later() {
        var before =
                drawn().stream().filter(p -> p.hospital() == LATER.hospital).toList();
        var days = CaseData.random("later days", LATER.hospital)
                .ints(LAST_DAY + 4, LAST_DAY_LATER)
                .distinct()
                .limit(LATER.cases)
                .sorted()
                .boxed()
                .toList();
        return group(LATER, before.size() + 1, days);
    }

    private List<CaseDataPatient> group(Group group) {
        int first = numbered.getOrDefault(group.hospital, 0) + 1;
        numbered.put(group.hospital, first + group.cases - 1);
        var days = days(group.hospital);
        return group(group, first, days.subList(first - 1, first - 1 + group.cases));
    }

    private static List<CaseDataPatient> group(Group group, int first, List<Integer> days) {
        for (int attempt = 0; ; attempt++) {
            var random = CaseData.random("patients", group.hospital, group.device, group.cases, attempt);
            var patients = new ArrayList<CaseDataPatient>();
            var weights = weights(group, random);
            for (int i = 0; i < group.cases; i++) {
                patients.add(patient(group, first + i, days.get(i), weights[i], random));
            }
            long above = patients.stream()
                    .filter(p -> p.fullFlow() > group.device.labelledFlow)
                    .count();
            if (above == group.aboveLabel) {
                return patients;
            }
        }
    }

    private static double[] weights(Group group, Random random) {
        var weights = new double[group.cases];
        int others = group.cases - group.infants;
        double width = (group.heaviest - group.lightest) / others;
        for (int i = 0; i < group.cases; i++) {
            double weight =
                    i < others ? group.lightest + (i + random.nextDouble()) * width : 3.2 + 0.7 * random.nextDouble();
            weights[i] = round(weight, 1);
        }
        var order = new ArrayList<>(Arrays.stream(weights).boxed().toList());
        Collections.shuffle(order, random);
        return order.stream().mapToDouble(w -> w).toArray();
    }

    private static CaseDataPatient patient(Group group, int number, int day, double weight, Random random) {
        int height =
                (int) StrictMath.round(50 * StrictMath.pow(weight / 3.3, 0.42) * (1 + 0.02 * random.nextGaussian()));
        double months = new LinearInterpolator().interpolate(KILOGRAMS, MONTHS).value(weight);
        double index = within(2.4, 3.2, 2.85 + 0.15 * random.nextGaussian() + (weight < 5 ? 0.1 : 0));
        double fullFlow = round(index * StrictMath.sqrt(height * weight / 3600), 2);
        double readingFlow = round(fullFlow * (0.95 + 0.05 * random.nextDouble()), 2);
        double lowest = within(28, 34.5, 31.8 + 1.4 * random.nextGaussian() + 0.15 * (weight - 7));
        double haematocrit = 0.294 + group.hospital.haematocritShift + 0.018 * random.nextGaussian();
        return new CaseDataPatient(
                "%s-%02d".formatted(group.hospital.letter, number),
                group.hospital,
                group.device,
                day,
                (int) StrictMath.round(months * StrictMath.exp(0.15 * random.nextGaussian())),
                weight,
                height,
                fullFlow,
                readingFlow,
                round(lowest, 1),
                round(within(0.262, 0.338, haematocrit), 3));
    }

    /** The days on which a hospital operated, in order. */
    private static List<Integer> days(CaseDataHospital hospital) {
        return CaseData.random("days", hospital)
                .ints(1, LAST_DAY)
                .distinct()
                .limit(30)
                .sorted()
                .boxed()
                .toList();
    }

    static double within(double low, double high, double value) {
        return Math.min(high, Math.max(low, value));
    }
}
