package comparand.demo;

/**
 * What goes wrong in raw files, with the share of the samples it befalls; a share of 0 befalls one row. Bubble counts and
 * names do not occur in these files, so what goes wrong with those is not here; a code that two patients share stands for
 * two patients with the same initials.
 */
enum CaseDataMessKind {
    HEADING_RENAMED(0),
    DEVICE_CHANGED(0),
    TWO_PATIENTS_ONE_CODE(0),
    HIDDEN_CORRECTION(0),
    CODE_RETYPED(0),
    PAST_MIDNIGHT(0),
    DECIMAL_SLIP(0.005),
    SIDES_SWAPPED(0.01),
    PRESSURES_SWAPPED(0.01),
    AIR_IN_SAMPLE(0.01),
    ABOVE_RANGE(0.01),
    SIGN_LOST(0.01),
    SATURATION_CALCULATED(0.01),
    ROW_TWICE(0.01),
    NO_FLOW(0.02),
    FREE_TEXT(0.02),
    TEMPERATURE_UNSETTLED(0.05),
    NO_VENOUS_SAMPLE(0.08),
    FRACTION_AS_PER_CENT(0.10),
    NO_WATER_TEMPERATURE(0.20);

    private final double share;

    CaseDataMessKind(double share) {
        this.share = share;
    }

    int rows(int samples) {
        return (int) Math.max(1, Math.round(share * samples));
    }
}
