package comparand.intake;

import static java.util.Objects.requireNonNull;

import comparand.document.form.FormList.Word;
import java.util.List;

/**
 * One thing a person is asked for: a column of the workbook, a question at the terminal.
 *
 * @param heading names it for good, and heads its column
 * @param group what it belongs to, above its heading
 * @param question one sentence for the terminal
 * @param help what the answer means, and how it is written; at most 255 characters, as a workbook shows no more
 * @param kind what can be written
 * @param words the words that can stand here; empty where anything can
 */
record Slot(String heading, String group, String question, String help, Kind kind, List<Word> words) {

    static final int LONGEST_HELP = 255;

    /** What can be written into a slot. */
    enum Kind {
        /** As it stands in the source. */
        TEXT,
        /** One of the words. */
        WORD,
        /** One of the words, or another. */
        SUGGESTED,
        /** Digits with a decimal point or comma, two with a word between them, or not reported. */
        NUMBER,
        /** Year-month-day; a month or a year where the source prints no more. */
        DATE
    }

    Slot {
        requireNonNull(kind, "kind");
        words = List.copyOf(words);
        if (help.length() > LONGEST_HELP) {
            throw new IllegalArgumentException(
                    heading + ": the help is longer than a workbook shows: " + help.length());
        }
        boolean offers = kind == Kind.WORD || kind == Kind.SUGGESTED;
        if (offers == words.isEmpty()) {
            throw new IllegalArgumentException(heading + " offers words or does not");
        }
    }

    static Slot text(String group, String heading, String question, String help) {
        return new Slot(heading, group, question, help, Kind.TEXT, List.of());
    }

    static Slot number(String group, String heading, String question, String help) {
        return new Slot(heading, group, question, help, Kind.NUMBER, List.of());
    }

    static Slot date(String group, String heading, String question, String help) {
        return new Slot(heading, group, question, help, Kind.DATE, List.of());
    }

    static Slot word(String group, String heading, String question, String help, List<Word> words) {
        return new Slot(heading, group, question, help, Kind.WORD, words);
    }

    static Slot suggested(String group, String heading, String question, String help, List<Word> words) {
        return new Slot(heading, group, question, help, Kind.SUGGESTED, words);
    }

    boolean allows(String word) {
        return words.stream().anyMatch(w -> w.word().equals(word));
    }
}
