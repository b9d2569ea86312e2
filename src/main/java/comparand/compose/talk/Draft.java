package comparand.compose.talk;

import comparand.document.talk.Part;
import comparand.model.Comparand;
import java.util.List;

/**
 * A slide before its neighbours have numbers.
 *
 * @param published values whose numbers stand on it: each with its place on the slide or in its strip
 */
record Draft(
        String id,
        String title,
        List<Part> parts,
        String strip,
        Speech speech,
        boolean backup,
        List<Comparand> published) {

    Draft {
        parts = List.copyOf(parts);
        published = List.copyOf(published);
    }

    /** What the presenter sees, without time and numbers of slides. */
    record Speech(
            List<String> say,
            List<String> numbers,
            List<String> source,
            List<String> conditions,
            List<Asked> asked,
            List<String> dont) {

        Speech {
            say = List.copyOf(say);
            numbers = List.copyOf(numbers);
            source = List.copyOf(source);
            conditions = List.copyOf(conditions);
            asked = List.copyOf(asked);
            dont = List.copyOf(dont);
        }
    }

    /** A question from the floor, and the id of the slide that answers it. */
    record Asked(String question, String slide) {}
}
