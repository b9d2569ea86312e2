package comparand.write.pptx;

import comparand.document.talk.Slide.SpeakerNote;
import java.util.List;
import org.apache.poi.sl.usermodel.Placeholder;
import org.apache.poi.xslf.usermodel.XSLFNotes;
import org.apache.poi.xslf.usermodel.XSLFTextShape;

/** Notes for the speaker: a heading, its lines, an empty line, and so on. */
final class NotesSetter {

    private NotesSetter() {}

    static void set(XSLFNotes notes, List<SpeakerNote> parts, TextSetter text) {
        XSLFTextShape body = List.of(notes.getPlaceholders()).stream()
                .filter(p -> p.getTextType() == Placeholder.BODY)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the notes of a slide have no place for text"));
        body.clearText();
        // the library copies fields of its own notes into them as runs with a field's attributes, which no schema
        // allows
        for (var copied : notes.getPlaceholders()) {
            if (copied.getTextType() != Placeholder.BODY && copied.getTextType() != Placeholder.SLIDE_IMAGE) {
                notes.removeShape(copied);
            }
        }
        for (var part : parts) {
            paragraph(body, part.heading(), true, text);
            part.lines().forEach(line -> paragraph(body, line, false, text));
            paragraph(body, "", false, text);
        }
    }

    private static void paragraph(XSLFTextShape body, String words, boolean strong, TextSetter text) {
        var paragraph = body.addNewTextParagraph();
        if (!words.isEmpty()) {
            var run = paragraph.addNewTextRun();
            run.setText(words);
            run.setBold(strong);
            text.language(run);
        }
    }
}
