package comparand.model.library;

import java.util.Locale;

/** What is counted: samples lie in cases or runs, runs on units, cases in centres. */
public enum SampleUnit {
    UNITS,
    RUNS,
    CASES,
    PATIENTS,
    SAMPLES;

    public String plural() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String singular() {
        return plural().substring(0, plural().length() - 1);
    }
}
