package comparand.compose.manuscript;

/** The tables of a manuscript, in the order in which its text names them first. */
enum Numbering {
    SOURCES("1"),
    LOCAL("2"),
    TOLERANCES("3"),
    CHARACTERISTICS("4"),
    RESULTS("5"),
    ASIDE("S1"),
    TRAIL("S2"),
    SCENARIOS("S3"),
    FORMULAS("S4");

    private final String number;

    Numbering(String number) {
        this.number = number;
    }

    String named(Writing writing) {
        return writing.say("ms.table", "n", number);
    }

    String captioned(Writing writing, String caption) {
        return writing.say("ms.table.caption", "n", number, "caption", caption);
    }
}
