package comparand.app;

/** Exit codes of the command line. */
final class Exit {

    /** Done; what was asked for is written. */
    static final int DONE = 0;
    /** STOP findings; nothing was written. */
    static final int STOPPED = 2;
    /** The command was used wrongly. */
    static final int USAGE = 64;
    /** A fault of our own. */
    static final int OUR_FAULT = 70;

    private Exit() {}
}
