package comparand.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.verapdf.core.EncryptedPdfException;
import org.verapdf.core.ModelParsingException;
import org.verapdf.core.ValidationException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** What the veraPDF validator finds wrong with a PDF against a standard. */
public final class PdfConformance {

    /** The most failures that are listed. */
    private static final int MOST = 25;

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private PdfConformance() {}

    /** ISO 14289-1, accessibility. */
    public static List<String> againstUa1(Path file) {
        return failures(file, PDFAFlavour.PDFUA_1);
    }

    /** ISO 19005-2 level A, archiving with its structure. */
    public static List<String> againstA2a(Path file) {
        return failures(file, PDFAFlavour.PDFA_2_A);
    }

    private static List<String> failures(Path file, PDFAFlavour flavour) {
        try (var in = Files.newInputStream(file);
                var parser = Foundries.defaultInstance().createParser(in, flavour);
                var validator = Foundries.defaultInstance().createValidator(flavour, MOST, false, false, false)) {
            var result = validator.validate(parser);
            if (result.getTestAssertions().isEmpty() && !result.isCompliant()) {
                return List.of("not compliant, and no reason given");
            }
            return result.getTestAssertions().stream()
                    .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
                    .map(a -> a.getRuleId().getClause() + "-" + a.getRuleId().getTestNumber() + ": " + a.getMessage()
                            + " at " + a.getLocation().getContext())
                    .distinct()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ModelParsingException | ValidationException | EncryptedPdfException e) {
            throw new IllegalStateException(e);
        }
    }
}
