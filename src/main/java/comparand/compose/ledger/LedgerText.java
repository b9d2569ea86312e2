package comparand.compose.ledger;

import comparand.compose.text.Words;
import comparand.document.result.LedgerResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A ledger as lines for a terminal. */
public final class LedgerText {

    private static final String INDENT = "    ";

    private final LedgerResult ledger;
    private final Words words;
    private final List<String> lines = new ArrayList<>();

    private LedgerText(LedgerResult ledger, Words words) {
        this.ledger = ledger;
        this.words = words;
    }

    /** All of it; no line ends with a blank, and blanks that do not break are plain ones. */
    public static String of(LedgerResult ledger, Words words) {
        return new LedgerText(ledger, words).text().replace('\u00a0', ' ');
    }

    private String text() {
        lines.add(words.say("ledger.title", "title", ledger.title()));
        if (ledger.inventedData()) {
            lines.add(words.say("invented"));
        }
        lines.add(RunLine.of(words, words.say("ledger.run.before"), ledger.before()));
        lines.add(RunLine.of(words, words.say("ledger.run.after"), ledger.after()));
        head("ledger.changes");
        ledger.changes().forEach(c -> {
            lines.add("%2d  %s: %s"
                    .formatted(c.number(), words.say("ledger.group." + c.group().toUpperCase(Locale.ROOT)), c.what()));
            lines.add(INDENT + words.say("ledger.from-to", "before", c.before(), "after", c.after()));
            lines.add(INDENT + c.why());
            lines.add(INDENT + c.effect());
        });
        none(ledger.changes());
        head("ledger.answers");
        ledger.answers().forEach(a -> {
            lines.add(words.say("ledger.kind." + a.kind().toUpperCase(Locale.ROOT)) + ": " + a.what());
            lines.add(INDENT + words.say("col.stood") + ": " + a.before());
            lines.add(INDENT + words.say("col.stands") + ": " + a.after());
            lines.add(INDENT + words.say("col.cause") + ": " + a.because());
        });
        none(ledger.answers());
        lines.add(words.say("ledger.same", "same", String.valueOf(ledger.same())));
        head("ledger.left-alone");
        ledger.leftAlone().forEach(l -> lines.add("- " + l));
        return String.join("\n", lines);
    }

    private void head(String key) {
        lines.add("");
        lines.add(words.say(key));
    }

    private void none(List<?> list) {
        if (list.isEmpty()) {
            lines.add(INDENT + words.say("ledger.none"));
        }
    }
}
