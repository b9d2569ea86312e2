package comparand.compose.text;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.document.Block.Note;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NotesTest {

    private final Notes notes = new Notes();

    @Test
    @DisplayName("notes are lettered in the order in which they are first called")
    void orderOfFirstCall() {
        assertThat(notes.marks(List.of("second rinse"))).isEqualTo("a");
        assertThat(notes.marks(List.of("first rinse", "cold"))).isEqualTo("b, c");

        assertThat(notes.list())
                .containsExactly(new Note("a", "second rinse"), new Note("b", "first rinse"), new Note("c", "cold"));
    }

    @Test
    @DisplayName("the same words are one note, wherever they are called again")
    void sameWordsOneNote() {
        notes.marks(List.of("cold", "warm"));

        assertThat(notes.marks(List.of("warm"))).isEqualTo("b");
        assertThat(notes.marks(List.of("new", "cold"))).isEqualTo("c, a");
        assertThat(notes.list()).hasSize(3);
    }

    @Test
    @DisplayName("a cell without a note has no mark")
    void none() {
        assertThat(notes.marks(List.of())).isEmpty();
        assertThat(notes.list()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0, a", "25, z", "26, aa", "27, ab", "51, az", "52, ba", "701, zz", "702, aaa"})
    @DisplayName("behind z comes aa, and behind zz aaa")
    void letters(int index, String letter) {
        assertThat(Notes.letter(index)).isEqualTo(letter);
    }

    @Test
    @DisplayName("a thousand notes have a thousand letters, and each keeps its own")
    void many() {
        var texts = IntStream.range(0, 1000).mapToObj(i -> "note " + i).toList();
        texts.forEach(t -> notes.marks(List.of(t)));

        assertThat(notes.list().stream().map(Note::mark))
                .doesNotHaveDuplicates()
                .hasSize(1000);
        assertThat(notes.list().stream().map(Note::text)).containsExactlyElementsOf(texts);
    }
}
