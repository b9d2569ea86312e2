package comparand.compose.manuscript;

import comparand.document.Block.Note;
import comparand.document.Block.Table;
import comparand.document.Cell;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes a table stand alone: its number and title, and below it what its brackets and abbreviations mean. */
final class Legends {

    /** Brackets around something that is not left open. */
    private static final Pattern BRACKETED = Pattern.compile("\\[[^\\[\\]?]*+\\]");

    /** In the order of the alphabet. */
    private static final List<String> ABBREVIATIONS = List.of("BTPS", "CI", "DOI", "NA", "NR", "SD", "SE", "STPD");

    private final Writing writing;

    Legends(Writing writing) {
        this.writing = writing;
    }

    Table complete(Numbering number, String caption, Table table) {
        var notes = new ArrayList<>(table.notes());
        var text = text(table);
        brackets(table, notes);
        var abbreviations = ABBREVIATIONS.stream()
                .filter(a -> Pattern.compile("(?<![\\p{L}\\d-])" + a + "(?![\\p{L}\\d-])")
                        .matcher(text)
                        .find())
                .map(a -> writing.say("ms.abbreviation", "short", a, "long", writing.say("ms.abbr." + a)))
                .toList();
        if (!abbreviations.isEmpty()) {
            notes.add(new Note("", writing.say("ms.say.abbreviations", "list", String.join("; ", abbreviations))));
        }
        return new Table(
                table.id(), number.captioned(writing, caption), table.columns(), table.rows(), notes, table.onPaper());
    }

    private void brackets(Table table, List<Note> notes) {
        var cells = table.rows().stream().flatMap(List::stream).map(Cell::shown).toList();
        if (cells.stream().anyMatch(c -> BRACKETED.matcher(c).find())) {
            notes.add(new Note("", writing.say("ms.say.brackets")));
        }
        if (cells.stream().anyMatch(c -> c.contains("?]"))) {
            notes.add(new Note("", writing.say("ms.say.brackets-unreported")));
        }
    }

    private static String text(Table table) {
        return Stream.of(
                        table.columns().stream().map(c -> c.heading()),
                        table.rows().stream().flatMap(List::stream).map(Cell::shown),
                        table.notes().stream().map(Note::text))
                .flatMap(s -> s)
                .collect(Collectors.joining(" | "));
    }
}
