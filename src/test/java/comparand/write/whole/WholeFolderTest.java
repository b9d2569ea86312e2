package comparand.write.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import comparand.write.whole.WholeFolder.Settled;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder is the old one or the new one, wherever its replacement stops. */
class WholeFolderTest {

    @TempDir
    Path parent;

    /** The program is gone: nothing behind it is carried out that would tidy up. */
    private static final class Gone extends Error {
        private static final long serialVersionUID = 1;
    }

    private Path folder() {
        return parent.resolve("out");
    }

    private void old() throws IOException {
        Files.createDirectories(folder());
        Files.writeString(folder().resolve("content"), "old");
    }

    private static boolean isWhole(Path folder) throws IOException {
        return Files.exists(folder.resolve("end"));
    }

    /** Renames so many times, then the program is gone before the next. */
    private static WholeFolder.Moving goneAfter(int renames) {
        int[] left = {renames};
        return (from, to) -> {
            if (left[0]-- == 0) {
                throw new Gone();
            }
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        };
    }

    /** Fails at the renames counted from 0. */
    private static WholeFolder.Moving failingAt(Integer... renames) {
        int[] at = {0};
        return (from, to) -> {
            if (List.of(renames).contains(at[0]++)) {
                throw new IOException("refused");
            }
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        };
    }

    private void replace(WholeFolder.Moving moving, boolean whole) throws IOException {
        try (var place =
                WholeFolder.take(folder(), WholeFolderTest::isWhole, moving).orElseThrow()) {
            place.settle();
            var fresh = place.begin();
            Files.writeString(fresh.resolve("content"), "new");
            if (whole) {
                Files.writeString(fresh.resolve("end"), "");
            }
            place.replace();
        }
    }

    private Settled settle() throws IOException {
        try (var place = WholeFolder.take(folder(), WholeFolderTest::isWhole).orElseThrow()) {
            return place.settle();
        }
    }

    private void stands(String content) throws IOException {
        assertThat(folder().resolve("content")).hasContent(content);
        try (var beside = Files.list(parent)) {
            assertThat(beside).containsExactly(folder());
        }
    }

    @Test
    @DisplayName("nothing is left beside a folder that was replaced, or that was written for the first time")
    void replaced() throws IOException {
        replace(goneAfter(9), true);
        stands("new");
        old();
        replace(goneAfter(9), true);
        stands("new");
        assertThat(WholeFolder.isUnsettled(folder())).isFalse();
    }

    @Test
    @DisplayName("stopped between the two renames, the next to come puts the new folder in its place")
    void betweenTheRenames() throws IOException {
        old();
        assertThatThrownBy(() -> replace(goneAfter(1), true)).isInstanceOf(Gone.class);
        assertThat(folder()).doesNotExist();
        assertThat(WholeFolder.isUnsettled(folder())).isTrue();

        assertThat(settle()).isEqualTo(Settled.FINISHED);
        stands("new");
        assertThat(Files.exists(folder().resolve("end"))).isTrue();
    }

    @Test
    @DisplayName("and the old one, where the new one is not whole")
    void betweenTheRenamesNotWhole() throws IOException {
        old();
        assertThatThrownBy(() -> replace(goneAfter(1), false)).isInstanceOf(Gone.class);

        assertThat(settle()).isEqualTo(Settled.PUT_BACK);
        stands("old");
    }

    @Test
    @DisplayName("a program that is killed at any step leaves what the next to come settles")
    void killed() throws IOException, InterruptedException {
        for (var step : List.of("filled", "between", "replaced")) {
            Deleting.all(parent);
            old();
            var program = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            Killed.class.getName(),
                            folder().toString(),
                            step)
                    .start();
            assertThat(program.waitFor()).as(step).isEqualTo(9);
            assertThat(WholeFolder.isUnsettled(folder())).as(step).isTrue();

            assertThat(settle()).isEqualTo(step.equals("between") ? Settled.FINISHED : Settled.CLEARED);
            stands(step.equals("filled") ? "old" : "new");
        }
    }

    /** Replaces a folder and is gone at one step, as a killed program is: nothing behind it runs. */
    static final class Killed {
        private Killed() {}

        public static void main(String[] args) throws IOException {
            var step = args[1];
            var place = WholeFolder.take(Path.of(args[0]), WholeFolderTest::isWhole, (from, to) -> {
                        if (from.endsWith("new") && step.equals("between")) {
                            Runtime.getRuntime().halt(9);
                        }
                        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
                    })
                    .orElseThrow();
            var fresh = place.begin();
            Files.writeString(fresh.resolve("content"), "new");
            Files.writeString(fresh.resolve("end"), "");
            if (step.equals("filled")) {
                Runtime.getRuntime().halt(9);
            }
            place.replace();
            Runtime.getRuntime().halt(9);
        }
    }

    @Test
    @DisplayName(
            "where the new one cannot be put in its place, the old one is back; where not even this goes, both lie whole beside it")
    void refused() throws IOException {
        old();
        assertThatThrownBy(() -> replace(failingAt(1), true)).hasMessage("refused");
        stands("old");

        assertThatThrownBy(() -> replace(failingAt(1, 2), true)).hasMessage("refused");
        assertThat(folder()).doesNotExist();
        assertThat(WholeFolder.work(folder()).resolve("old/content")).hasContent("old");
        assertThat(settle()).isEqualTo(Settled.FINISHED);
        stands("new");
    }

    @Test
    @DisplayName("a place that is taken is no other program's either, until it is given up")
    void takenFromAnotherProgram() throws IOException, InterruptedException {
        try (var place = WholeFolder.take(folder(), WholeFolderTest::isWhole).orElseThrow()) {
            place.settle();
            Files.writeString(place.begin().resolve("content"), "new");
            assertThat(asked()).isEqualTo(3);
        }
        assertThat(asked()).isZero();
    }

    private int asked() throws IOException, InterruptedException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Asking.class.getName(),
                        folder().toString())
                .start()
                .waitFor();
    }

    /** Asks for a place that another program may have. */
    static final class Asking {
        private Asking() {}

        public static void main(String[] args) throws IOException {
            var place = WholeFolder.take(Path.of(args[0]), WholeFolderTest::isWhole);
            Runtime.getRuntime().halt(place.isEmpty() ? 3 : 0);
        }
    }

    @Test
    @DisplayName("a place that is taken is nobody else's until it is given up")
    void taken() throws IOException {
        try (var place = WholeFolder.take(folder(), WholeFolderTest::isWhole).orElseThrow()) {
            assertThat(place.isHalfway()).isFalse();
            assertThat(WholeFolder.take(folder(), WholeFolderTest::isWhole)).isEmpty();
        }
        assertThat(settle()).isEqualTo(Settled.NOTHING);
    }
}
