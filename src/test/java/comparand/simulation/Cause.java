package comparand.simulation;

/** What stands in the way of a fair comparison of a published value with the local results; one a pair. */
enum Cause {
    NOTHING("nothing wrong"),
    TOLERATED("flow or haemoglobin off, within the tolerance"),
    FLOW_BETWEEN("other flow, between those measured here"),
    FLOW_BEYOND("other flow, beyond those measured here"),
    HAEMOGLOBIN("other haemoglobin"),
    TEMPERATURE("other temperature"),
    LIQUID("water in place of blood"),
    PARTS("a filter between the ports"),
    SILENT_ALIKE("a condition not reported, in truth alike"),
    SILENT_OTHER("a condition not reported, in truth another"),
    UNEXPLAINED("± unexplained"),
    WITHOUT_NUMBER("± without n"),
    FIGURE("a figure without spread and n"),
    LIMIT("a limit"),
    REPEATED("repeated rows here"),
    HOSPITALS("several hospitals here"),
    SEVERAL("two of these or more");

    private final String words;

    Cause(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** Of a value's own two: what is unlike, and how it is printed; where both are sound, of the local rows. */
    static Cause of(Unlike unlike, boolean trulyOther, Print print, LocalStudy local) {
        if (unlike != Unlike.ALIKE) {
            return print.isExplained() ? ofConditions(unlike, trulyOther) : SEVERAL;
        }
        if (!print.isExplained()) {
            return ofPrint(print);
        }
        if (local.severalHospitals()) {
            return local.repeated() ? SEVERAL : HOSPITALS;
        }
        return local.repeated() ? REPEATED : NOTHING;
    }

    private static Cause ofConditions(Unlike unlike, boolean trulyOther) {
        return switch (unlike) {
            case ALIKE -> NOTHING;
            case WITHIN_TOLERANCE -> TOLERATED;
            case FLOW_BETWEEN -> FLOW_BETWEEN;
            case FLOW_BEYOND -> FLOW_BEYOND;
            case HAEMOGLOBIN -> HAEMOGLOBIN;
            case TEMPERATURE -> TEMPERATURE;
            case LIQUID -> LIQUID;
            case PARTS -> PARTS;
            case SILENT -> trulyOther ? SILENT_OTHER : SILENT_ALIKE;
        };
    }

    private static Cause ofPrint(Print print) {
        return switch (print) {
            case SD, SE, INTERVAL, QUARTILES -> NOTHING;
            case UNEXPLAINED -> UNEXPLAINED;
            case WITHOUT_NUMBER -> WITHOUT_NUMBER;
            case FIGURE -> FIGURE;
            case LIMIT -> LIMIT;
        };
    }
}
