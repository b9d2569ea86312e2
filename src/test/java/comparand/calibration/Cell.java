package comparand.calibration;

import comparand.stat.Derived;
import java.util.Locale;

/** One method in one setting: how often a trial comes out. */
record Cell(String section, String setting, String event, Claim claim, int runs, Trial trial) {

    /** One set of drawn data, and whether the event happened; a refusal is counted apart. */
    interface Trial {
        Derived<Boolean> happened(Draw draw);
    }

    record Result(Cell cell, int refused, double rate, double error) {

        boolean broken() {
            return cell.claim.brokenBy(rate, error);
        }

        String line() {
            return String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %d | %d | %.2f | %.2f | %s |",
                    cell.setting,
                    cell.event,
                    cell.claim.words(),
                    cell.runs,
                    refused,
                    rate,
                    error,
                    cell.claim.equals(Claim.NONE) ? "" : broken() ? "**falls short**" : "kept");
        }
    }

    Result run() {
        // a seed of its own, so that a cell comes out the same whatever else is run
        var draw = new Draw((section + setting + event).hashCode() * 0x9E3779B97F4A7C15L);
        int happened = 0;
        int refused = 0;
        for (int i = 0; i < runs; i++) {
            var outcome = trial.happened(draw).value();
            if (outcome.isEmpty()) {
                refused++;
            } else if (outcome.orElseThrow()) {
                happened++;
            }
        }
        double counted = Math.max(1, runs - refused);
        double share = happened / counted;
        return new Result(this, refused, 100 * share, 100 * Math.sqrt(share * (1 - share) / counted));
    }
}
