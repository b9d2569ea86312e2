package comparand.document.form;

import java.util.List;

/** Words that can stand in a cell, with what each means, visible in the workbook so that a list is no magic. */
public record FormList(String name, List<Word> words) {

    public FormList {
        words = List.copyOf(words);
        if (words.isEmpty()) {
            throw new IllegalArgumentException("the list " + name + " offers nothing");
        }
    }

    /** A word as it is written, and what it means. */
    public record Word(String word, String meaning) {}
}
