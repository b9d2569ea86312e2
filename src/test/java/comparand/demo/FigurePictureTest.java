package comparand.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import comparand.model.library.FigureReadingRecord;
import comparand.read.LibraryReader;
import comparand.unit.Unit;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The invented figure that the demo reads a value from: its picture has ticks and mark where the record says they were read. */
final class FigurePictureTest {

    private static final Path PICTURE = Path.of("src/test/resources/pictures/skarrow-ifu-2-figure-3.png");

    private static FigureReadingRecord reading() {
        return LibraryReader.read(Path.of("evidence"))
                .<FigureReadingRecord>fold(
                        (library, said) -> library.values()
                                .filter(v -> v.id().equals("B17"))
                                .findFirst()
                                .flatMap(v -> v.value().readFromFigure())
                                .orElseThrow(),
                        said -> {
                            throw new AssertionError(String.valueOf(said));
                        });
    }

    @Test
    void theFingerprintIsThatOfThePicture() throws IOException, NoSuchAlgorithmException {
        var digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(PICTURE));

        assertThat(reading().picture().orElseThrow().sha256().value())
                .isEqualTo(HexFormat.of().formatHex(digest));
    }

    /** Rows with ink just left of the upright line are ticks; the mark is a cross on a column of its own. */
    @Test
    void ticksAndMarkStandWhereTheyWereRead() throws IOException {
        var picture = ImageIO.read(PICTURE.toFile());
        var reading = reading();

        assertThat(reading.axis().stream().map(t -> (int) t.at().value().toDouble()))
                .containsExactlyInAnyOrderElementsOf(black(picture, 55));
        assertThat(reading.ends().stream().map(e -> (int) e.value().toDouble()))
                .containsExactlyInAnyOrder(
                        black(picture, 60).get(0),
                        black(picture, 60).get(black(picture, 60).size() - 1));
        // the arms of the cross reach five points to either side of its centre, and its column ends on the axis below
        var column = black(picture, 300).stream().filter(y -> y != 612).toList();
        assertThat(column).hasSize(11);
        assertThat((int) reading.points().get(0).value().toDouble()).isEqualTo(column.get(5));
    }

    private static List<Integer> black(BufferedImage picture, int x) {
        return IntStream.range(0, picture.getHeight())
                .filter(y -> picture.getRaster().getSample(x, y, 0) == 0)
                .boxed()
                .toList();
    }

    /** 100 · 255/464 = 54.957 mmHg. */
    @Test
    void theValueFollowsFromThePlaces() {
        assertThat(reading().reading(Unit.of("mmHg")).value()).isCloseTo(54.957, within(0.0005));
    }
}
