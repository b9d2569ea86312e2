package comparand.document.talk;

import java.util.List;
import java.util.Optional;

/**
 * A slide.
 *
 * @param id unique in the deck, for links
 * @param title a whole sentence
 * @param parts from top to bottom
 * @param strip the line at the foot: numbers of units, conditions, places in the sources
 * @param notes what the presenter sees, in the fixed order of their headings
 * @param backup whether it is shown only when asked for
 * @param back where a link at the foot leads back to, such as the index of questions
 */
public record Slide(
        String id,
        String title,
        List<Part> parts,
        String strip,
        List<SpeakerNote> notes,
        boolean backup,
        Optional<Back> back) {

    public Slide {
        parts = List.copyOf(parts);
        notes = List.copyOf(notes);
        if (id.isBlank() || title.isBlank() || notes.isEmpty()) {
            throw new IllegalArgumentException("a slide has an id, a title and notes");
        }
    }

    /** A link back: its words, and the slide it leads to. */
    public record Back(String text, String slide) {}

    /** One part of the notes, such as what to say or the source: heading and lines. */
    public record SpeakerNote(String heading, List<String> lines) {
        public SpeakerNote {
            lines = List.copyOf(lines);
        }
    }
}
