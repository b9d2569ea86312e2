package comparand.hostile;

/** How many of a thousand inputs a reader is fed: those that cost little get most. */
final class Share {

    private Share() {}

    /** Of {@code all} inputs, those for a reader. */
    static long of(FuzzedReader reader, long all) {
        return Math.max(1, all * thousandths(reader.name()) / 1000);
    }

    private static long thousandths(String name) {
        if (name.equals("formula")) {
            return 440;
        }
        if (name.startsWith("record-")) {
            return 30;
        }
        if (name.startsWith("references-")) {
            return 40;
        }
        return switch (name) {
            case "csv" -> 70;
            case "answers", "results" -> 8;
            case "workbook" -> 10;
            // a thousandth, and the rest of the thousand
            default -> 1;
        };
    }
}
