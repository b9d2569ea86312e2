package comparand.write.docx;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;

/**
 * Captions. Of one that begins as {@code Table 3. }, {@code Table S1. } or {@code Figure 2. } the number is set as a field
 * that counts, so that it stays right when its author moves the table; word, prefix and number are the document's.
 */
final class Captions {

    private static final Pattern NUMBERED = Pattern.compile(
            "(?<label>\\p{L}+)[ \u00a0](?<series>\\p{Lu}?)(?<number>\\d+)(?<rest>[.:] .*)", Pattern.DOTALL);

    private final RunningText running;
    private final Bookmarks bookmarks;
    private final Map<String, Integer> counted = new HashMap<>();

    Captions(RunningText running, Bookmarks bookmarks) {
        this.running = running;
        this.bookmarks = bookmarks;
    }

    /** Stays on one page with what it stands above. */
    void above(String name, String caption) {
        if (!caption.isEmpty()) {
            var paragraph = running.paragraph("Caption");
            paragraph.setKeepNext(true);
            set(paragraph, name, caption);
        }
    }

    void below(String name, String caption) {
        if (!caption.isEmpty()) {
            set(running.paragraph("Caption"), name, caption);
        }
    }

    private void set(XWPFParagraph paragraph, String name, String caption) {
        var parts = NUMBERED.matcher(caption);
        if (!parts.matches()) {
            RunningText.run(paragraph, caption);
            return;
        }
        var counter = parts.group("label") + (parts.group("series").isEmpty() ? "" : "_" + parts.group("series"));
        int number = counted.merge(counter, 1, Integer::sum);
        if (number != Integer.parseInt(parts.group("number"))) {
            throw new IllegalArgumentException("this is number %d of its kind: %s".formatted(number, caption));
        }
        bookmarks.about(paragraph.getCTP(), name, () -> {
            strong(paragraph, parts.group("label") + "\u00a0" + parts.group("series"));
            var field = paragraph.getCTP().addNewFldSimple();
            field.setInstr(" SEQ " + counter + " \\* ARABIC ");
            var shown = field.addNewR();
            shown.addNewRPr().addNewB();
            shown.addNewT().setStringValue(String.valueOf(number));
        });
        strong(paragraph, parts.group("rest").substring(0, 1));
        RunningText.run(paragraph, parts.group("rest").substring(1));
    }

    private static void strong(XWPFParagraph paragraph, String text) {
        var run = paragraph.createRun();
        run.setText(text);
        run.setBold(true);
    }
}
