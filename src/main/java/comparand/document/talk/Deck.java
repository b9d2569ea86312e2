package comparand.document.talk;

import comparand.document.Edition;
import comparand.document.Look;
import java.util.HashSet;
import java.util.List;

/** The slides of a talk, backup slides last. */
public record Deck(String name, Edition edition, Look look, List<Slide> slides) {

    public Deck {
        slides = List.copyOf(slides);
        var ids = new HashSet<String>();
        var titles = new HashSet<String>();
        for (var slide : slides) {
            if (!ids.add(slide.id()) || !titles.add(slide.title())) {
                throw new IllegalArgumentException("a slide has an id and a title of its own: " + slide.title());
            }
        }
        if (name.isBlank() || slides.isEmpty()) {
            throw new IllegalArgumentException("a talk has a name and slides");
        }
    }
}
