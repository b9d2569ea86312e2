package comparand.document.talk.layout;

import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.talk.Deck;
import comparand.document.talk.Part;
import comparand.document.talk.Slide;
import comparand.document.talk.Slide.SpeakerNote;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Small talks for tests. */
public final class DeckDraft {

    private DeckDraft() {}

    public static Deck of(Slide... slides) {
        return of(Look.PLAIN, slides);
    }

    public static Deck of(Look look, Slide... slides) {
        var edition = new Edition(
                "Three devices",
                "Which one?",
                LocalDate.of(2026, 11, 20),
                "A group",
                "Comparand 0",
                "01234567",
                "draft",
                List.of("Invented data"),
                List.of(),
                "en");
        return new Deck("talk", edition, look, List.of(slides));
    }

    public static Slide slide(String id, String title, Part... parts) {
        return slide(id, title, false, parts);
    }

    public static Slide backup(String id, String title, Part... parts) {
        return slide(id, title, true, parts);
    }

    private static Slide slide(String id, String title, boolean backup, Part... parts) {
        return new Slide(
                id,
                title,
                List.of(parts),
                "6 units each",
                List.of(new SpeakerNote("SAY", List.of("This."))),
                backup,
                Optional.empty());
    }
}
