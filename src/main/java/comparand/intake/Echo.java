package comparand.intake;

import comparand.diag.Span;

/** What was read otherwise than it was typed, so that the person who typed it can say no. */
public record Echo(Span at, String typed, String readAs) {

    /** {@code Values!F7: "9,3" read as 9.3}. */
    public String text() {
        return "%s: \"%s\" read as %s".formatted(at.within(), typed, readAs);
    }
}
