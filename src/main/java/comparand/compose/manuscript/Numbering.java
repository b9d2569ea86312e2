package comparand.compose.manuscript;

import java.util.stream.Stream;

/** The tables of a manuscript, in the order in which its text names them first; those of the supplement are counted apart. */
enum Numbering {
    SEARCHES(Part.SUPPLEMENT_OF_LOG),
    SCREENED(Part.SUPPLEMENT_OF_LOG),
    SOURCES(Part.TEXT),
    LOCAL(Part.TEXT),
    TOLERANCES(Part.TEXT),
    CHARACTERISTICS(Part.TEXT),
    RESULTS(Part.TEXT),
    ASIDE(Part.SUPPLEMENT),
    TRAIL(Part.SUPPLEMENT),
    SCENARIOS(Part.SUPPLEMENT),
    FORMULAS(Part.SUPPLEMENT);

    /** The figure of how sources were found comes before all others. */
    static final String FIRST_FIGURE = "1";

    private final Part part;

    Numbering(Part part) {
        this.part = part;
    }

    /** Where a table stands. */
    private enum Part {
        TEXT(""),
        SUPPLEMENT("S"),
        /** Only where a log of screening was kept. */
        SUPPLEMENT_OF_LOG("S");

        private final String prefix;

        Part(String prefix) {
            this.prefix = prefix;
        }
    }

    private boolean isIn(Writing writing) {
        var run = writing.run();
        return part != Part.SUPPLEMENT_OF_LOG
                || run.library().screening(run.dossier()).isPresent();
    }

    private String number(Writing writing) {
        long before = Stream.of(values())
                .takeWhile(t -> t != this)
                .filter(t -> t.part.prefix.equals(part.prefix))
                .filter(t -> t.isIn(writing))
                .count();
        return part.prefix + (before + 1);
    }

    String named(Writing writing) {
        return writing.say("ms.table", "n", number(writing));
    }

    String captioned(Writing writing, String caption) {
        return writing.say("ms.table.caption", "n", number(writing), "caption", caption);
    }
}
