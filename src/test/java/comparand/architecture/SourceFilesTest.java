package comparand.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What every source file keeps to. */
class SourceFilesTest {

    /** A file over 300 lines holds two things. */
    private static final int LONGEST = 300;

    private static final Pattern PUBLIC_TYPE = Pattern.compile(
            "(?m)^(?:@.*\n)*public (?:abstract |final |sealed |non-sealed )*(?:class|record|interface|enum|@interface) ");

    /** A number formatted by pattern escapes the one rounding routine. */
    private static final Pattern FORMATTED_DECIMALS = Pattern.compile("%[-+ 0-9]*\\.[0-9]+[fge]");

    private static List<Path> sources(String folder) {
        try (Stream<Path> files = Files.walk(Path.of(folder))) {
            var found =
                    files.filter(f -> f.toString().endsWith(".java")).sorted().toList();
            assertThat(found).hasSizeGreaterThan(20);
            return found;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void noFileIsLongerThanOneThingNeeds() {
        assertThat(sources("src"))
                .allSatisfy(f ->
                        assertThat(text(f).lines().count()).as(f.toString()).isLessThanOrEqualTo(LONGEST));
    }

    @Test
    void everyPublicTypeSaysWhatItIs() {
        assertThat(sources("src/main")).allSatisfy(file -> {
            var source = text(file);
            var type = PUBLIC_TYPE.matcher(source);
            if (type.find()) {
                assertThat(source.substring(0, type.start()).stripTrailing())
                        .as(file.toString())
                        .endsWith("*/");
            }
        });
    }

    @Test
    void noNumberIsFormattedAroundTheRoundingRoutine() {
        assertThat(sources("src/main"))
                .noneMatch(f -> FORMATTED_DECIMALS.matcher(text(f)).find());
    }

    @Test
    void noTestIsSwitchedOff() {
        assertThat(sources("src/test"))
                .filteredOn(f -> !f.endsWith("SourceFilesTest.java"))
                .noneMatch(f -> text(f).contains("@Disabled") || text(f).contains("assumeTrue("));
    }
}
