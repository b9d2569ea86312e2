package comparand.demo;

import static comparand.demo.CaseDataPatients.within;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * The results of every case, so that the means and SDs of the cases that count are the printed ones: pressures by
 * device and hospital, the rest by device.
 */
final class CaseDataRegister {

    /** Cases whose free haemoglobin was not measured. */
    static final Set<String> NOT_MEASURED = Set.of("N-06", "A-04", "N-20", "A-15", "F-11");

    private final Values drops = new Values();
    private final Values minutes = new Values();
    private final Values freeHaemoglobin = new Values();
    private final Values plateletsBefore = new Values();
    private final Values plateletsAfter = new Values();

    /** One recorded whole number for each case. */
    private static final class Values {
        private final Map<String, Long> byCase = new HashMap<>();

        void put(CaseDataPatient patient, long value) {
            byCase.put(patient.id(), value);
        }

        void exchange(CaseDataPatient one, CaseDataPatient other) {
            long first = of(one);
            put(one, of(other));
            put(other, first);
        }

        int of(CaseDataPatient patient) {
            return Math.toIntExact(Objects.requireNonNull(byCase.get(patient.id())));
        }
    }

    private CaseDataRegister() {}

    /** Every case by its code. */
    static Map<String, CaseDataCase> drawn() {
        var register = new CaseDataRegister();
        var patients = CaseDataPatients.drawn();
        var counted = patients.subList(0, patients.size() - CaseDataPatients.EXTRAS.size());
        var extras = patients.subList(counted.size(), patients.size());
        counted.stream()
                .collect(Collectors.groupingBy(
                        p -> CaseDataPatients.GROUPS.stream()
                                .filter(g -> g.hospital() == p.hospital() && g.device() == p.device())
                                .findFirst()
                                .orElseThrow(),
                        LinkedHashMap::new,
                        Collectors.toList()))
                .forEach(register::pressures);
        counted.stream()
                .collect(Collectors.groupingBy(CaseDataPatient::device, LinkedHashMap::new, Collectors.toList()))
                .forEach(register::byDevice);
        extras.forEach(register::extra);
        return patients.stream()
                .map(register::assembled)
                .collect(Collectors.toMap(CaseDataCase::id, Function.identity(), (a, b) -> a, LinkedHashMap::new));
    }

    /** The cases of the weeks after, whose results no printed summary fixes. */
    static List<CaseDataCase> later() {
        var register = new CaseDataRegister();
        var patients = CaseDataPatients.later();
        patients.forEach(register::later);
        return patients.stream().map(register::assembled).toList();
    }

    private void later(CaseDataPatient patient) {
        var random = CaseData.random("later", patient.id());
        var device = patient.device();
        drops.put(patient, StrictMath.round(pressureShape(patient, random) / patient.hospital().pressureStep));
        minutes.put(patient, StrictMath.round(drawn(device.bypass(), random)));
        freeHaemoglobin.put(patient, StrictMath.round(within(8, 60, drawn(device.freeHaemoglobin(), random))));
        plateletsBefore.put(patient, StrictMath.round(200 + 160 * random.nextDouble()));
        double left = within(0.45, 0.9, 1 + drawn(device.platelets(), random) / 100.0);
        plateletsAfter.put(patient, StrictMath.round(left * plateletsBefore.of(patient)));
    }

    private static double drawn(Target target, Random random) {
        return target.meanValue() + target.sdValue() * random.nextGaussian();
    }

    private void pressures(CaseDataPatients.Group group, List<CaseDataPatient> patients) {
        var random = CaseData.random("pressure", group.hospital(), group.device());
        double step = group.hospital().pressureStep;
        var fit = CaseDataFit.steps(patients.size(), step, 12, 110);
        var steps = fit.to(group.pressure(), shape(patients, p -> pressureShape(p, random)), random);
        for (int i = 0; i < steps.length; i++) {
            drops.put(patients.get(i), steps[i]);
        }
    }

    private static double pressureShape(CaseDataPatient patient, Random random) {
        double viscosity = CaseDataBlood.viscosityRatio(patient.haematocritAfter(), patient.lowest() + 2);
        return patient.device().pressureDrop(patient.readingFlow(), viscosity)
                * StrictMath.exp(0.08 * random.nextGaussian());
    }

    private void byDevice(CaseDataDevice device, List<CaseDataPatient> patients) {
        var random = CaseData.random("results", device);
        fitted(minutes, device.bypass(), patients, 66, 190, random, p -> random.nextGaussian());
        var measured =
                patients.stream().filter(p -> !NOT_MEASURED.contains(p.id())).toList();
        fitted(freeHaemoglobin, device.freeHaemoglobin(), measured, 8, 60, random, p -> {
            double longer = (minutes.of(p) - 121) / 27.0;
            return StrictMath.exp(0.25 * longer + 0.3 * random.nextGaussian());
        });
        new CaseDataBalance(measured, freeHaemoglobin::of, freeHaemoglobin::exchange)
                .reach(CaseData.random("free haemoglobin by hospital", device));
        platelets(device, patients, random);
        new CaseDataBalance(patients, p -> 100.0 * plateletsAfter.of(p) / plateletsBefore.of(p), (one, other) -> {
                    plateletsBefore.exchange(one, other);
                    plateletsAfter.exchange(one, other);
                })
                .reach(CaseData.random("platelets by hospital", device));
    }

    private static void fitted(
            Values numbers,
            Target target,
            List<CaseDataPatient> patients,
            double lowest,
            double highest,
            Random random,
            ToDoubleFunction<CaseDataPatient> shape) {
        var fitted = CaseDataFit.steps(patients.size(), 1, lowest, highest).to(target, shape(patients, shape), random);
        for (int i = 0; i < fitted.length; i++) {
            numbers.put(patients.get(i), fitted[i]);
        }
    }

    /** Counts before are drawn so that the count after, at the change that is wanted, is one seen in children. */
    private void platelets(CaseDataDevice device, List<CaseDataPatient> patients, Random random) {
        var target = device.platelets();
        var wanted = shape(patients, p -> random.nextGaussian());
        var before = new long[wanted.length];
        var perCount = new double[wanted.length];
        for (int i = 0; i < wanted.length; i++) {
            double left = 1 + (target.meanValue() + wanted[i] * target.sdValue()) / 100;
            double least = Math.max(184, 88 / left);
            double most = Math.min(416, 212 / left);
            before[i] = StrictMath.round(least + (most - least) * random.nextDouble());
            perCount[i] = 100.0 / before[i];
        }
        var after = new CaseDataFit(-100, perCount, 82, 219).to(target, wanted, random);
        for (int i = 0; i < after.length; i++) {
            plateletsBefore.put(patients.get(i), before[i]);
            plateletsAfter.put(patients.get(i), after[i]);
        }
    }

    private static double[] shape(List<CaseDataPatient> patients, ToDoubleFunction<CaseDataPatient> shape) {
        return patients.stream().mapToDouble(shape).toArray();
    }

    private void extra(CaseDataPatient patient) {
        var random = CaseData.random("extra", patient.id());
        double drop = 1.25 * pressureShape(patient, random);
        drops.put(patient, StrictMath.round(drop / patient.hospital().pressureStep));
        minutes.put(patient, StrictMath.round(125 + 15 * random.nextDouble()));
        freeHaemoglobin.put(patient, StrictMath.round(30 + 15 * random.nextDouble()));
        plateletsBefore.put(patient, 268L);
        plateletsAfter.put(patient, StrictMath.round(160 + 20 * random.nextDouble()));
    }

    private CaseDataCase assembled(CaseDataPatient patient) {
        var random = CaseData.random("case", patient.id());
        var id = patient.id();
        double pressureOut = patient.hospital().shown(152 + 12 * random.nextGaussian());
        double left = plateletsAfter.of(patient) / (double) plateletsBefore.of(patient);
        // platelets and red cells are thinned by the same prime
        double thinned = within(0.63, 0.97, 0.80 + 0.6 * (left - 0.67) + 0.03 * random.nextGaussian());
        double fibrinogen = within(1.7, 3.1, 2.3 + 0.35 * random.nextGaussian());
        double donorShare = 1.45 - 0.14 * patient.weight() + (patient.device().prime - 50) / 200;
        return new CaseDataCase(
                patient,
                minutes.of(patient),
                pressureOut + drops.of(patient) * patient.hospital().pressureStep,
                pressureOut,
                plateletsBefore.of(patient),
                plateletsAfter.of(patient),
                CaseDataHospital.round(patient.haematocritAfter() / thinned, 3),
                NOT_MEASURED.contains(id) ? OptionalInt.empty() : OptionalInt.of(freeHaemoglobin.of(patient)),
                CaseDataHospital.round(fibrinogen, 2),
                CaseDataHospital.round(fibrinogen * thinned * StrictMath.exp(0.05 * random.nextGaussian()), 2),
                random.nextDouble() < donorShare,
                !id.equals("A-18"),
                id.equals("F-14"));
    }
}
