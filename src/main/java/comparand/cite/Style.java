package comparand.cite;

/** How references are written. */
public enum Style {
    /** Numbers in brackets in the order of citation (Vancouver), after Citing Medicine of the National Library of Medicine. */
    NUMERIC("nlm-citation-sequence.csl", true, false),
    /** Raised numbers in the order of citation, after the manual of the American Medical Association. */
    AMA("american-medical-association.csl", true, true),
    /** Author and year, after the manual of the American Psychological Association. */
    APA("apa.csl", false, false);

    private final String file;
    private final boolean numbered;
    private final boolean raised;

    Style(String file, boolean numbered, boolean raised) {
        this.file = file;
        this.numbered = numbered;
        this.raised = raised;
    }

    String file() {
        return file;
    }

    /** Whether works have numbers, in the order of their first citation. */
    public boolean isNumbered() {
        return numbered;
    }

    /** Whether citations stand above the line. */
    public boolean isRaised() {
        return raised;
    }
}
