package comparand.check;

/** One thing that can be wrong with a library. */
interface Rule {

    /** Names the rule for good, in findings and in the manual. */
    String code();

    /** Adds a finding for every place where the rule is broken. */
    void check(Context library, Findings findings);
}
