package comparand.write;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.document.Document;
import comparand.document.Look;
import comparand.write.docx.TextWriter;
import comparand.write.office.NoClock;
import comparand.write.xlsx.WorkbookWriter;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;

/** Files written side by side are those written one by one, whichever of them ends first. */
class NoClockTest {

    private static final List<DocumentWriter> WRITERS = List.of(new TextWriter(), new WorkbookWriter());

    @Test
    void noEntryOfAnArchiveIsDatedByTheClockWhileOthersAreWritten() throws IOException {
        var alone = WRITERS.stream().map(NoClockTest::bytes).toList();

        var all = new ArrayList<byte[]>();
        NoClock.during(() -> all.addAll(IntStream.range(0, 60)
                .parallel()
                .mapToObj(i -> bytes(WRITERS.get(i % 2)))
                .toList()));

        for (int i = 0; i < all.size(); i++) {
            assertThat(all.get(i)).isEqualTo(alone.get(i % 2));
        }
        assertThat(years(alone.get(1))).isNotEmpty().allMatch(year -> year < 2000);
    }

    /** Archives count from 1980; the library writes that instead of the clock. */
    private static List<Integer> years(byte[] archive) throws IOException {
        var years = new ArrayList<Integer>();
        try (var in = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (var entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                years.add(entry.getTimeLocal().getYear());
            }
        }
        return years;
    }

    private static byte[] bytes(DocumentWriter writer) {
        var out = new ByteArrayOutputStream();
        try {
            writer.write(document(), out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static Document document() {
        return SampleText.sample(Look.PLAIN);
    }
}
