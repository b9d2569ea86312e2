package comparand.demo;

import static comparand.demo.CaseDataHospital.round;
import static comparand.demo.CaseDataPatients.within;

import comparand.demo.CaseDataSample.Gases;
import comparand.demo.CaseDataSample.Phase;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * The samples of one case: what the patient uses up at the temperature of the moment, what the blood therefore carries on
 * both sides of the device, and the oxygen fraction that the device needs to give that much.
 */
final class CaseDataSamples {

    /** How many samples a case has; drawn from these. */
    private static final int[] COUNTS = {2, 3, 4, 4, 5, 5, 5, 5, 6, 6, 7, 8};

    /** What a child uses up at 37 °C, mL/min per m² of body surface. */
    private static final double USED = 124;

    private final CaseDataCase subject;
    private final CaseDataPatient patient;
    private final CaseDataHospital hospital;
    private final Random random;
    private final double usage;
    private final double deposits;
    private final double barometer;

    private CaseDataSamples(CaseDataCase subject) {
        this.subject = subject;
        this.patient = subject.patient();
        this.hospital = patient.hospital();
        this.random = CaseData.random("samples", subject.id());
        this.usage = StrictMath.exp(0.06 * random.nextGaussian());
        this.barometer = hospital.shownBarometer(hospital.barometer + 4 * random.nextGaussian());
        double viscosity = CaseDataBlood.viscosityRatio(patient.haematocritAfter(), patient.lowest() + 2);
        this.deposits = subject.pressureDrop() / patient.device().pressureDrop(patient.readingFlow(), viscosity);
    }

    static List<CaseDataSample> of(CaseDataCase subject) {
        return new CaseDataSamples(subject).all();
    }

    private List<CaseDataSample> all() {
        int count = COUNTS[random.nextInt(COUNTS.length)];
        var samples = new ArrayList<CaseDataSample>();
        for (int i = 0; i < count; i++) {
            double share = (i + 0.3 + 0.4 * random.nextDouble()) / count;
            var sample = sample(i + 1, share);
            while (!isSeen(sample)) {
                sample = sample(i + 1, share);
            }
            samples.add(sample);
        }
        return samples;
    }

    /** A sample after a share of the bypass. */
    private CaseDataSample sample(int number, double share) {
        var phase = share < 0.25 ? Phase.COOLING : share < 0.65 ? Phase.STABLE : Phase.REWARMING;
        double bloodIn = round(temperature(share, phase), 1);
        double flow = round(patient.fullFlow() * (0.99 - 0.012 * (36 - bloodIn) * random.nextDouble()), 2);
        double waterIn = round(bloodIn + waterAbove(phase, bloodIn), 1);
        double exchange = patient.device().exchange(flow) + 0.01 * random.nextGaussian();
        double haemoglobin = round(33.3 * patient.haematocritAfter() + 0.2 * random.nextGaussian(), 1);
        double used = patient.surface()
                * USED
                * usage
                * StrictMath.pow(2.3, (bloodIn - 37) / 10)
                * StrictMath.exp(0.11 * random.nextGaussian());
        var arterial = arterial();
        var venous = venous(arterial, haemoglobin, used / (10 * flow));
        double viscosity = CaseDataBlood.viscosityRatio(haemoglobin / 33.3, bloodIn);
        double drop = deposits
                * patient.device().pressureDrop(flow, viscosity)
                * StrictMath.exp(0.07 * random.nextGaussian());
        double pressureOut = hospital.shown(subject.pressureOut() + 6 * random.nextGaussian());
        return new CaseDataSample(
                subject.id(),
                number,
                (int) StrictMath.round(4 + share * (subject.bypassMinutes() - 8)),
                phase,
                flow,
                round(sweep(used, arterial.pco2()), 2),
                oxygenFraction(used, arterial.po2()),
                haemoglobin,
                shown(arterial),
                round(CaseDataBlood.baseExcess(arterial.pco2(), arterial.ph(), haemoglobin), 1),
                shown(venous),
                bloodIn,
                round(bloodIn + exchange * (waterIn - bloodIn), 1),
                waterIn,
                pressureOut + hospital.shown(drop),
                pressureOut,
                barometer);
    }

    private double temperature(double share, Phase phase) {
        double warm = 36.2;
        double fall = warm - patient.lowest();
        double wanted = phase == Phase.COOLING
                ? warm - fall * share / 0.25
                : phase == Phase.STABLE
                        ? patient.lowest()
                        : patient.lowest() + fall * Math.min(1, (share - 0.65) / 0.25);
        return wanted + 0.2 * random.nextGaussian();
    }

    private double waterAbove(Phase phase, double bloodIn) {
        double gradient = 3.5 + 4 * random.nextDouble();
        return phase == Phase.COOLING
                ? -gradient
                : phase == Phase.STABLE ? 0.3 * random.nextGaussian() : Math.min(gradient, 39.8 - bloodIn);
    }

    private Gases arterial() {
        double ph = 7.40 + 0.025 * random.nextGaussian();
        double pco2 = 40 + hospital.pco2Shift + 2.5 * random.nextGaussian();
        double po2 = within(110, 270, 168 * StrictMath.exp(0.2 * random.nextGaussian()));
        double saturation = CaseDataBlood.saturation(po2, ph) + 0.0015 * random.nextGaussian();
        return new Gases(po2, pco2, ph, Math.min(0.999, saturation));
    }

    /** Blood that has given off {@code used} mL of oxygen per dL and taken on 0.85 of that as carbon dioxide. */
    private static Gases venous(Gases arterial, double haemoglobin, double used) {
        double content = arterial.oxygen(haemoglobin) - used;
        double saturation = Math.max(0.05, (content - 0.12) / (CaseDataBlood.HUFNER * haemoglobin));
        double wanted = arterial.carbonDioxide(haemoglobin) + 0.85 * used;
        double pco2 = CaseDataBlood.solved(
                arterial.pco2(),
                110,
                p -> CaseDataBlood.carbonDioxideContent(p, venousPh(arterial, p), haemoglobin, saturation) - wanted);
        double ph = venousPh(arterial, pco2);
        double po2 = CaseDataBlood.oxygenPressure(content, haemoglobin, ph);
        return new Gases(po2, pco2, ph, CaseDataBlood.saturation(po2, ph));
    }

    private static double venousPh(Gases arterial, double pco2) {
        return arterial.ph() - 0.0045 * (pco2 - arterial.pco2());
    }

    /** Linear in what is taken up, per membrane area; more where the blood is to leave with more than 150 mmHg. */
    private double oxygenFraction(double used, double po2) {
        double above = (po2 - 150) / (barometer - 47);
        double fraction = 0.21 + used / (250 * patient.device().membraneArea) + above + 0.02 * random.nextGaussian();
        return round(within(0.21, 1, fraction), 2);
    }

    /** So much gas that its carbon dioxide leaves a little below that of the blood; 863 turns mL at STPD into mmHg. */
    private double sweep(double used, double pco2) {
        return 0.863 * 0.85 * used / (0.88 * pco2 * StrictMath.exp(0.06 * random.nextGaussian()));
    }

    private Gases shown(Gases gases) {
        return new Gases(
                hospital.shown(gases.po2()),
                hospital.shown(gases.pco2()),
                round(gases.ph(), 3),
                round(gases.saturation(), 3));
    }

    /** What does not occur at a working device is drawn again. */
    private static boolean isSeen(CaseDataSample sample) {
        double exchanged = sample.carbonDioxideTransfer() / sample.oxygenTransfer();
        return sample.venous().saturation() >= 0.60
                && sample.venous().saturation() <= 0.88
                && sample.idealPressure() > sample.arterial().po2() + 15
                && sample.shunt() > 0
                && sample.shunt() < 0.35
                && exchanged > 0.6
                && exchanged < 1.3;
    }
}
