package comparand.model;

import comparand.diag.Span;

/** A raw data file that could not be read to its end; whoever reads it turns this into a finding. */
public final class UnreadableRows extends RuntimeException {

    private static final long serialVersionUID = 1L;
    private final transient Span place;
    private final String problem;
    private final String fix;

    public UnreadableRows(Span place, String problem, String fix) {
        super(problem);
        this.place = place;
        this.problem = problem;
        this.fix = fix;
    }

    public UnreadableRows(Span place, String problem, String fix, Throwable cause) {
        super(problem, cause);
        this.place = place;
        this.problem = problem;
        this.fix = fix;
    }

    /** Where reading came to its end. */
    public Span place() {
        return place;
    }

    /** One sentence without a full stop. */
    public String problem() {
        return problem;
    }

    public String fix() {
        return fix;
    }
}
