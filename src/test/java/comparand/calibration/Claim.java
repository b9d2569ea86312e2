package comparand.calibration;

/**
 * What a method promises of a rate, in per cent.
 *
 * @param words as the report prints it
 */
record Claim(double least, double most, String words) {

    static final Claim EXACT_95 = new Claim(94, 97, "94-97");
    static final Claim EXACT_90 = new Claim(89, 92, "89-92");
    static final Claim AT_LEAST_93 = new Claim(93, 100, ">= 93");
    static final Claim AT_LEAST_95 = new Claim(95, 100, ">= 95");
    static final Claim NEAR_95 = new Claim(93, 97, "93-97, approximate");
    static final Claim AT_MOST_5 = new Claim(0, 5, "<= 5");
    static final Claim NONE = new Claim(0, 100, "for contrast");

    /** Whether the rate lies off the claim by more than two standard errors. */
    boolean brokenBy(double rate, double error) {
        return rate + 2 * error < least || rate - 2 * error > most;
    }
}
