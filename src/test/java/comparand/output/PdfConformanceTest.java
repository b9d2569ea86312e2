package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.Built;
import comparand.support.PdfConformance;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every PDF keeps the standards for accessibility and for archives, as far as a validator can tell (veraPDF 1.30). */
class PdfConformanceTest {

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every PDF keeps PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2)")
    void standards(Built built) throws IOException {
        var files = pdfs(built.folder());

        assertThat(files).isNotEmpty();
        for (var file : files) {
            assertThat(PdfConformance.againstUa1(file))
                    .as("PDF/UA-1 of " + file.getFileName())
                    .isEmpty();
            assertThat(PdfConformance.againstA2a(file))
                    .as("PDF/A-2a of " + file.getFileName())
                    .isEmpty();
        }
    }

    @Test
    @DisplayName("the validator is no formality: it misses structure, language and colours in a bare page")
    void aBarePage(@TempDir Path folder) throws IOException {
        var file = folder.resolve("bare.pdf");
        try (var pdf = new PDDocument()) {
            pdf.addPage(new PDPage());
            pdf.save(file.toFile());
        }

        assertThat(PdfConformance.againstUa1(file)).isNotEmpty();
        assertThat(PdfConformance.againstA2a(file)).isNotEmpty();
    }

    private static List<Path> pdfs(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            return files.filter(f -> f.toString().endsWith(".pdf")).sorted().toList();
        }
    }
}
