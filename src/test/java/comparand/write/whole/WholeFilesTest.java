package comparand.write.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import comparand.digest.Sha;
import comparand.write.whole.WholeFiles.Change;
import comparand.write.whole.WholeFiles.ChangedMeanwhile;
import comparand.write.whole.WholeFiles.Content;
import comparand.write.whole.WholeFiles.Settled;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that belong together are all the old ones or all the new ones. */
class WholeFilesTest {

    private static final int KILLS = 10;
    private static final List<String> NAMES =
            List.of("sources/a.yaml", "sources/b.yaml", "sources/c.yaml", "sources/d.yaml");

    @TempDir
    Path root;

    private static List<Change> changes(Optional<String> before, String text) {
        return NAMES.stream().map(n -> new Change(n, before, Content.of(text))).toList();
    }

    private Set<String> texts() throws IOException {
        var texts = new TreeSet<String>();
        for (var name : NAMES) {
            texts.add(Files.exists(root.resolve(name)) ? Files.readString(root.resolve(name)) : "absent");
        }
        return texts;
    }

    /** Writes the files over and over, each time with another number, until it is killed. */
    static final class WriteForever {
        private WriteForever() {}

        public static void main(String[] args) throws IOException {
            var root = Path.of(args[0]);
            WholeFiles.settle(root);
            var first = root.resolve(NAMES.get(0));
            var before = Files.exists(first) ? Optional.of(Files.readString(first)) : Optional.<String>empty();
            for (int turn = before.map(Integer::parseInt).orElse(0) + 1; ; turn++) {
                WholeFiles.write(root, changes(before, Integer.toString(turn)));
                before = Optional.of(Integer.toString(turn));
            }
        }
    }

    @Test
    @DisplayName("a kill at any moment leaves what the next to come settles: all files of one writing")
    void killed() throws IOException, InterruptedException {
        var random = new Random(11);
        int cutOff = 0;
        for (int i = 0; i < KILLS; i++) {
            var writer = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            WriteForever.class.getName(),
                            root.toString())
                    .redirectErrorStream(true)
                    .start();
            while (texts().contains("absent") && writer.isAlive()) {
                TimeUnit.MILLISECONDS.sleep(5);
            }
            TimeUnit.MILLISECONDS.sleep(150 + random.nextInt(250));
            assertThat(writer.isAlive()).as("still writing").isTrue();
            writer.destroyForcibly().waitFor();

            cutOff += WholeFiles.settle(root) == Settled.NOTHING ? 0 : 1;
            assertThat(texts()).as("after kill %d", i).hasSize(1).doesNotContain("absent");
            assertThat(WholeFiles.isUnsettled(root)).isFalse();
        }
        assertThat(cutOff).as("kills within a writing").isPositive();
    }

    /** Stops the program as a kill would, at the file that is made ready next. */
    private static final class Gone extends Error {
        private static final long serialVersionUID = 1;
    }

    @Test
    @DisplayName("who is gone before all is made ready has written nothing")
    void goneBefore() throws IOException {
        WholeFiles.write(root, changes(Optional.empty(), "old"));
        var wanted = new ArrayList<>(changes(Optional.of("old"), "new"));
        wanted.set(2, new Change(NAMES.get(2), Optional.of("old"), file -> {
            throw new Gone();
        }));

        assertThatThrownBy(() -> WholeFiles.write(root, wanted)).isInstanceOf(Gone.class);
        assertThat(WholeFiles.settle(root)).isEqualTo(Settled.CLEARED);
        assertThat(texts()).containsExactly("old");
    }

    @Test
    @DisplayName("a file that somebody wrote meanwhile stops all, and stays as they wrote it")
    void changedMeanwhile() throws IOException {
        WholeFiles.write(root, changes(Optional.empty(), "old"));
        Files.writeString(root.resolve(NAMES.get(3)), "by hand");

        assertThatThrownBy(() -> WholeFiles.write(root, changes(Optional.of("old"), "new")))
                .isInstanceOfSatisfying(
                        ChangedMeanwhile.class, e -> assertThat(e.path()).isEqualTo(NAMES.get(3)));
        assertThat(texts()).containsExactly("by hand", "old");
        assertThat(WholeFiles.isUnsettled(root)).isFalse();
    }

    @Test
    @DisplayName("where one cannot be put in its place, those before it are as they were")
    void undone() throws IOException {
        WholeFiles.write(root, changes(Optional.empty(), "old"));
        Files.writeString(root.resolve("file"), "in the way");
        var wanted = new ArrayList<>(changes(Optional.of("old"), "new"));
        wanted.add(1, new Change("fresh/e.yaml", Optional.empty(), Content.of("new")));
        wanted.add(new Change("file/below.yaml", Optional.empty(), Content.of("new")));

        assertThatThrownBy(() -> WholeFiles.write(root, wanted)).isInstanceOf(IOException.class);
        assertThat(texts()).containsExactly("old");
        assertThat(root.resolve("fresh/e.yaml")).doesNotExist();
        assertThat(WholeFiles.isUnsettled(root)).isFalse();
    }

    @Test
    @DisplayName(
            "a file that was changed after the program was cut off is not written over, and the next to come says so")
    void changedAfter() throws IOException {
        WholeFiles.write(root, changes(Optional.empty(), "old"));
        var work = Files.createDirectory(root.resolve(WholeFiles.FOLDER));
        Files.writeString(work.resolve("0"), "new");
        Files.writeString(work.resolve("1"), "new");
        new Journal(List.of(
                        new Journal.Line(
                                "0",
                                Sha.of("new".getBytes(StandardCharsets.UTF_8)),
                                Optional.of(Sha.of(root.resolve(NAMES.get(0)))),
                                NAMES.get(0)),
                        new Journal.Line(
                                "1",
                                Sha.of(work.resolve("1")),
                                Optional.of(Sha.of(root.resolve(NAMES.get(1)))),
                                NAMES.get(1))))
                .write(work);
        Files.writeString(root.resolve(NAMES.get(1)), "by hand");

        assertThatThrownBy(() -> WholeFiles.settle(root)).isInstanceOf(ChangedMeanwhile.class);
        assertThat(texts()).contains("by hand");
        Files.writeString(root.resolve(NAMES.get(1)), "old");
        assertThat(WholeFiles.settle(root)).isEqualTo(Settled.FINISHED);
        assertThat(Files.readString(root.resolve(NAMES.get(1)))).isEqualTo("new");
    }
}
