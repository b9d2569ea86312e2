package comparand.document.talk.layout;

import comparand.document.Edition;
import comparand.document.talk.Deck;
import comparand.document.talk.Slide;
import java.util.ArrayList;

/** The foot of a slide: strip and link back, below them what every slide carries. */
public final class Foot {

    /** Small, because the notes repeat it. */
    public static final double SIZE = 12;

    private static final double BACK_WIDTH = 150;
    private static final double PAGE_WIDTH = 48;
    private static final double GAP = 12;
    private static final double LINE = SIZE * Lines.LEADING;

    private Foot() {}

    /** Where the strip stands: two lines, beside them room for a link back. */
    public static Box strip(Slide slide, Stage stage) {
        var foot = stage.foot();
        double width = foot.width() - (slide.back().isPresent() ? BACK_WIDTH + GAP : 0);
        return new Box(foot.x(), foot.y() + 4, width, 2 * LINE);
    }

    public static Box back(Stage stage) {
        var foot = stage.foot();
        return new Box(foot.right() - BACK_WIDTH, foot.y() + 4, BACK_WIDTH, LINE);
    }

    public static Box imprint(Stage stage) {
        var foot = stage.foot();
        return new Box(foot.x(), foot.bottom() - LINE - 2, foot.width() - PAGE_WIDTH, LINE);
    }

    public static Box page(Stage stage) {
        var imprint = imprint(stage);
        return new Box(imprint.right(), imprint.y(), PAGE_WIDTH, LINE);
    }

    /** Marks such as that the data are invented, date, state, tool and fingerprint, the house. */
    public static String imprint(Deck deck) {
        Edition edition = deck.edition();
        var parts = new ArrayList<>(edition.marks());
        parts.add(edition.imprint(" · "));
        if (!deck.look().house().isBlank()) {
            parts.add(deck.look().house());
        }
        return String.join(" · ", parts);
    }
}
