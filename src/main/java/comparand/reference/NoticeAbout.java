package comparand.reference;

import comparand.model.library.SourceState;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A reference that is itself a notice about another work: a retraction, an erratum, an expression of concern. MEDLINE says so by
 * the tags ROF, PROF, EFR and ECF, registration agencies by {@code update-to}, publishers by how its title begins.
 *
 * @param text all that may name the other work
 * @param title of the other work, as far as the notice's own title gives it; may be empty
 */
record NoticeAbout(SourceState state, String text, String title) {

    private static final Map<String, SourceState> TAGS = Map.of(
            "ROF", SourceState.RETRACTED,
            "ECF", SourceState.CONCERN,
            "EFR", SourceState.CORRECTED,
            "PROF", SourceState.CORRECTED);

    /** Publication types of MEDLINE; the retraction has had two names. */
    private static final Set<String> NOTICES =
            Set.of("retraction of publication", "retraction notice", "published erratum", "expression of concern");

    private static final Pattern TITLE = Pattern.compile(
            "(?i)^(?<word>retraction|withdrawal|expression of concern|erratum|corrigendum|correction|addendum)(?: note| notice)?"
                    + "(?:\\s+(?:to|of|for|on|regarding))?\\s*(?:[:\u2013\u2014]|[\"\u201C\u201E](?=.)|\\bto\\b:?)\\s*[\"\u201C\u201E]?(?<title>.+?)[\"\u201D\u201C]?$");

    private static final Pattern PUBMED = Pattern.compile("\\bPMID:?\\s*(\\d{1,9})\\b");

    static Optional<NoticeAbout> of(Reference reference) {
        for (var tag :
                TAGS.entrySet().stream().sorted(Map.Entry.comparingByKey()).toList()) {
            var texts = reference.kept("nbib", tag.getKey());
            if (!texts.isEmpty()) {
                return Optional.of(new NoticeAbout(tag.getValue(), String.join(" ", texts), title(reference)));
            }
        }
        for (var kind : reference.kept("nbib", "PT")) {
            if (NOTICES.contains(kind.toLowerCase(Locale.ROOT))) {
                return Optional.of(new NoticeAbout(state(kind), "", title(reference)));
            }
        }
        var updates = reference.kept("csl-json", "update-to:json");
        if (!updates.isEmpty()) {
            return Optional.of(new NoticeAbout(state(updates.get(0)), updates.get(0), title(reference)));
        }
        var title = TITLE.matcher(reference.title());
        return title.matches()
                ? Optional.of(new NoticeAbout(state(title.group("word")), "", title.group("title")))
                : Optional.empty();
    }

    private static String title(Reference reference) {
        var title = TITLE.matcher(reference.title());
        return title.matches() ? title.group("title") : "";
    }

    private static SourceState state(String words) {
        var small = words.toLowerCase(Locale.ROOT);
        return small.contains("concern")
                ? SourceState.CONCERN
                : small.contains("partial") || !(small.contains("retraction") || small.contains("withdrawal"))
                        ? SourceState.CORRECTED
                        : SourceState.RETRACTED;
    }

    /** The source it is about, if the library has it. */
    Optional<Known> target(Collection<Known> library) {
        var doi = Doi.within(text).map(Doi::key);
        var pmid = PUBMED.matcher(text);
        var number = pmid.find() ? Optional.of(pmid.group(1)) : Optional.<String>empty();
        return Stream.<Predicate<Reference>>of(
                        r -> doi.isPresent() && doi.equals(r.field(Field.DOI).map(Doi::key)),
                        r -> number.isPresent() && number.equals(r.field(Field.PMID)),
                        r -> !title.isEmpty() && Titles.alike(title, r.title()))
                .flatMap(p -> library.stream().filter(k -> p.test(k.reference())))
                .findFirst();
    }
}
