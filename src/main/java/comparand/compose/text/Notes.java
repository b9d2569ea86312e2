package comparand.compose.text;

import comparand.document.Block.Note;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The notes of one table: lettered in order of first call; the same words are one note. */
public final class Notes {

    private final Map<String, String> marks = new LinkedHashMap<>();

    /** The marks of some notes, comma between, in the order called. */
    public String marks(List<String> texts) {
        var called = new ArrayList<String>();
        for (var text : texts) {
            called.add(marks.computeIfAbsent(text, t -> letter(marks.size())));
        }
        return String.join(", ", called);
    }

    public List<Note> list() {
        return marks.entrySet().stream()
                .map(e -> new Note(e.getValue(), e.getKey()))
                .toList();
    }

    /** a to z, then aa, ab and so on. */
    public static String letter(int index) {
        return (index >= 26 ? letter(index / 26 - 1) : "") + (char) ('a' + index % 26);
    }
}
