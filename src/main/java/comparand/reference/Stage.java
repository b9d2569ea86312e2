package comparand.reference;

/** Where a report stands on its way: what is said at a meeting or put out before review often appears again as an article. */
enum Stage {
    PREPRINT("preprint"),
    ABSTRACT("abstract"),
    WHOLE("article");

    private final String word;

    Stage(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }

    boolean isEarly() {
        return this != WHOLE;
    }

    static Stage of(Reference reference) {
        return switch (reference.type()) {
            case "article", "manuscript", "post" -> PREPRINT;
            case "paper-conference", "speech" -> ABSTRACT;
            default -> WHOLE;
        };
    }
}
