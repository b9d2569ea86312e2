package comparand.reference;

import comparand.model.library.SourceKind;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What kind of source a reference may be of. A file of references does not say whether a paper reports a bench or patients: the
 * words of the title do, or nothing does, and the person is told which.
 *
 * @param reason as a clause
 * @param isSure whether the file says so; else it is an assumption
 */
record KindGuess(SourceKind kind, String reason, boolean isSure) {

    private static final Pattern INSTRUCTIONS = Pattern.compile(
            "instructions? for use|gebrauchsanweisung|mode d.emploi|notice d.utilisation|istruzioni per l.uso"
                    + "|instrucciones de uso|gebruiksaanwijzing|bruksanvisning|operator.?s manual|\\bifu\\b");
    private static final Pattern BENCH = Pattern.compile(
            "\\bbench|\\bin[ -]vitro\\b|\\bex[ -]vivo\\b|\\bmock\\b|\\btest (?:rig|circuit|bench)\\b|\\bbovine\\b|\\bporcine\\b"
                    + "|\\bbubbles?\\b|\\blaborator|\\bsimulated\\b|\\bcomputational\\b|pr(?:ü|ue)fstand|im labor");
    private static final Pattern CLINICAL = Pattern.compile(
            "\\bpatients?\\b|\\binfants?\\b|\\bneonat|\\bchildren\\b|\\badults?\\b|\\bp(?:a)?ediatric\\b|\\bretrospective"
                    + "|\\bprospective|\\brandomi[sz]ed|\\bcohort\\b|\\bclinical\\b|\\bcase (?:report|series)\\b|\\btrial\\b"
                    + "|\\bcent(?:re|er)s\\b|\\bhumans\\b|\\bcases\\b|\\bpatienten\\b|\\bkinder");
    private static final Pattern LETTER = Pattern.compile("\\bletter\\b|\\bcomment\\b|\\beditorial\\b");

    static KindGuess of(Reference reference) {
        var title = reference.title().toLowerCase(Locale.ROOT);
        var said = Stream.concat(reference.kept("nbib", "PT").stream(), reference.kept("nbib", "MH").stream())
                .collect(Collectors.joining("; "))
                .toLowerCase(Locale.ROOT);
        return word(INSTRUCTIONS, title)
                .map(w -> new KindGuess(SourceKind.INSTRUCTIONS_FOR_USE, says(w), true))
                .or(() -> byType(reference))
                .or(() -> word(LETTER, said)
                        .map(w -> new KindGuess(SourceKind.LETTER, "its publication type is " + w, true)))
                .or(() -> byWords(title, SourceKind.BENCH_PAPER, BENCH, CLINICAL))
                .or(() -> byWords(title, SourceKind.CLINICAL_PAPER, CLINICAL, BENCH))
                .or(() -> word(Pattern.compile("in vitro techniques"), said)
                        .map(w -> new KindGuess(SourceKind.BENCH_PAPER, "its subject headings say " + w, true)))
                .or(() -> word(CLINICAL, said)
                        .map(w -> new KindGuess(
                                SourceKind.CLINICAL_PAPER, "its publication types or headings say " + w, true)))
                .orElseGet(() -> new KindGuess(
                        SourceKind.BENCH_PAPER,
                        "assumed: the file does not say whether on a bench or in patients",
                        false));
    }

    private static Optional<KindGuess> byType(Reference reference) {
        var type = "its type is " + reference.type();
        return switch (reference.type()) {
            case "standard" -> Optional.of(new KindGuess(SourceKind.STANDARD, type, true));
            case "article", "manuscript" -> Optional.of(new KindGuess(SourceKind.PREPRINT, type, true));
            case "paper-conference", "speech" -> Optional.of(new KindGuess(SourceKind.ABSTRACT, type, true));
            case "personal_communication" -> Optional.of(new KindGuess(SourceKind.LETTER, type, true));
            case "pamphlet" ->
                Optional.of(new KindGuess(
                        SourceKind.FLYER, type + " and its title does not say instructions for use", false));
            case "report" ->
                Optional.of(new KindGuess(
                        SourceKind.REGISTRY_REPORT,
                        type,
                        reference.title().toLowerCase(Locale.ROOT).contains("regist")));
            default -> Optional.empty();
        };
    }

    /** By the title, unless its words say both. */
    private static Optional<KindGuess> byWords(String title, SourceKind kind, Pattern words, Pattern others) {
        return word(words, title)
                .filter(w -> word(others, title).isEmpty() || kind == SourceKind.BENCH_PAPER)
                .map(w -> new KindGuess(kind, says(w), word(others, title).isEmpty()));
    }

    private static String says(String word) {
        return "the title says \"" + word + "\"";
    }

    private static Optional<String> word(Pattern words, String text) {
        var found = words.matcher(text);
        return found.find() ? Optional.of(found.group()) : Optional.empty();
    }

    /** The kind as a record spells it. */
    String word() {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
