package comparand.model;

/** A raw data file that could not be read to its end; the study stage turns it into a finding. */
public final class UnreadableRows extends RuntimeException {

    private static final long serialVersionUID = 1L;
    private final int line;
    private final String problem;
    private final String fix;

    public UnreadableRows(int line, String problem, String fix, Throwable cause) {
        super(problem, cause);
        this.line = line;
        this.problem = problem;
        this.fix = fix;
    }

    /** The last line that could be read, or 1. */
    public int line() {
        return line;
    }

    /** One sentence without a full stop. */
    public String problem() {
        return problem;
    }

    public String fix() {
        return fix;
    }
}
