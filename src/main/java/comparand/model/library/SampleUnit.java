package comparand.model.library;

import java.util.Locale;

/** What is counted: samples lie in cases or runs, runs on units, cases in centres. */
public enum SampleUnit {
    UNITS,
    RUNS,
    CASES,
    PATIENTS,
    SAMPLES,
    CENTRES;

    /** What lies directly within it: runs on a unit, samples of a case. */
    public SampleUnit below() {
        return this == UNITS ? RUNS : SAMPLES;
    }

    public String plural() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String singular() {
        return plural().substring(0, plural().length() - 1);
    }
}
