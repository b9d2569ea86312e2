package comparand.compose.manuscript;

import comparand.compose.text.Run;
import comparand.document.Block;
import comparand.document.Block.Heading;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.result.ResultSet;
import comparand.model.library.ManuscriptRecord;
import comparand.model.library.SearchKind;
import comparand.model.library.StudyKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** What its author still has to write or to check; nothing of it is invented. The page is taken out before submission. */
final class AuthorsList {

    private static final Set<String> OUTSIDE_THE_TEXT = Set.of("declared", "asked", "unmeasured");

    private final Writing writing;
    private final Run run;
    private final Optional<ManuscriptRecord> own;

    AuthorsList(Writing writing) {
        this.writing = writing;
        this.run = writing.run();
        this.own = run.dossier().manuscript();
    }

    List<Block> blocks(ResultSet results) {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(say("ms.say.todo"), Style.BODY));
        missing(blocks);
        if (!results.findings().isEmpty()) {
            blocks.add(new Heading(say("ms.todo-findings")));
            results.findings()
                    .forEach(f -> point(
                            blocks,
                            say(
                                    "ms.say.finding",
                                    "code",
                                    f.code(),
                                    "file",
                                    f.file(),
                                    "line",
                                    String.valueOf(f.line()),
                                    "message",
                                    Methods.upper(f.message()),
                                    "fix",
                                    Methods.upper(f.fix()))));
        }
        // what a comparison leaves open, or what differs, stands in the text
        var unknown = results.unknowns().stream()
                .filter(u -> OUTSIDE_THE_TEXT.contains(u.kind()))
                .toList();
        if (!unknown.isEmpty()) {
            blocks.add(new Heading(say("ms.todo-unknown")));
            unknown.forEach(
                    u -> point(blocks, say("ms.say.unknown", "what", u.what(), "device", u.device(), "who", u.who())));
        }
        return blocks;
    }

    private void missing(List<Block> blocks) {
        var keys = new ArrayList<String>();
        if (own.map(m -> m.authors().isEmpty()).orElse(true)) {
            keys.add("authors");
        }
        unless(keys, "ethics", ManuscriptRecord::ethics);
        unless(keys, "registration", ManuscriptRecord::registration);
        if (hasCases()) {
            unless(keys, "eligibility", ManuscriptRecord::eligibility);
            unless(keys, "allocation", ManuscriptRecord::allocation);
        }
        unless(keys, "funding", ManuscriptRecord::funding);
        unless(keys, "data-availability", ManuscriptRecord::dataAvailability);
        if (!keys.isEmpty()) {
            blocks.add(new Heading(say("ms.todo-missing")));
            keys.forEach(k ->
                    point(blocks, say("ms.say.missing-entry", "what", say("ms.entry." + k), "key", k, "file", file())));
        }
        if (run.dossier().screening().isEmpty()) {
            point(blocks, say("ms.say.missing-screening", "file", file()));
        }
        withoutWords(blocks);
        if (run.dossier().interests().isEmpty()) {
            point(blocks, say("ms.say.missing-interests", "file", file()));
        }
        if (run.dossier().firstSeen().isEmpty()) {
            point(blocks, say("ms.say.missing-first-seen", "file", file()));
        }
    }

    private boolean hasCases() {
        return run.dossier().studies().stream()
                .flatMap(s -> run.library().study(s.value()).stream())
                .anyMatch(s -> s.kind().value() == StudyKind.CLINICAL);
    }

    private void unless(List<String> keys, String key, Function<ManuscriptRecord, Optional<?>> entry) {
        if (own.flatMap(entry).isEmpty()) {
            keys.add(key);
        }
    }

    /** Words of a search that somebody could repeat; of other places, who was asked says enough. */
    private void withoutWords(List<Block> blocks) {
        run.library()
                .screening(run.dossier())
                .ifPresent(log -> log.searches().stream()
                        .filter(s -> s.words().isEmpty())
                        .filter(s -> s.kind().value() == SearchKind.DATABASE
                                || s.kind().value() == SearchKind.REGISTER)
                        .forEach(s -> point(
                                blocks,
                                say(
                                        "ms.say.missing-words",
                                        "where",
                                        s.where().value(),
                                        "search",
                                        s.name(),
                                        "file",
                                        "screening/" + log.id() + ".yaml"))));
    }

    private String file() {
        return "dossiers/" + run.dossier().id() + ".yaml";
    }

    private static void point(List<Block> blocks, String text) {
        blocks.add(new Paragraph(text, Style.POINT));
    }

    private String say(String key, String... places) {
        return writing.say(key, places);
    }
}
