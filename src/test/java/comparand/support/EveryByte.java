package comparand.support;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * All that stands in files, seen or not: parts of office files and of workbooks within them, text, metadata and streams of
 * PDFs, other files as they are. Compressed pixels are not looked into.
 */
public final class EveryByte {

    private final Map<String, String> texts = new TreeMap<>();

    private EveryByte() {}

    /** By the file's name, and the part's within it. */
    public static Map<String, String> of(Path folder) {
        var all = new EveryByte();
        try (var files = Files.walk(folder)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                all.read(folder.relativize(file).toString(), Files.readAllBytes(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all.texts;
    }

    private void read(String name, byte[] bytes) throws IOException {
        if (bytes.length > 4 && bytes[0] == 'P' && bytes[1] == 'K') {
            try (var zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
                for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                    read(name + "!" + entry.getName(), zip.readAllBytes());
                }
            }
        } else if (new String(bytes, 0, Math.min(4, bytes.length), StandardCharsets.US_ASCII).equals("%PDF")) {
            pdf(name, bytes);
        } else {
            texts.put(name, new String(bytes, StandardCharsets.UTF_8));
        }
    }

    private void pdf(String name, byte[] bytes) throws IOException {
        try (var pdf = Loader.loadPDF(bytes)) {
            texts.put(name + "!pages", new PDFTextStripper().getText(pdf));
            var strings = new StringBuilder();
            var document = pdf.getDocument();
            for (var key : document.getXrefTable().keySet()) {
                collect(document.getObjectFromPool(key).getObject(), strings);
            }
            collect(document.getTrailer(), strings);
            texts.put(name + "!strings", strings.toString());
        }
    }

    /** Strings of one object; others that it names are met by themselves. */
    private static void collect(COSBase object, StringBuilder strings) throws IOException {
        if (object instanceof COSString text) {
            strings.append(text.getString()).append('\n');
        } else if (object instanceof COSDictionary dictionary) {
            for (COSName name : dictionary.keySet()) {
                collect(dictionary.getItem(name), strings);
            }
            if (object instanceof COSStream stream && !COSName.IMAGE.equals(stream.getItem(COSName.SUBTYPE))) {
                strings.append(stream.toTextString()).append('\n');
            }
        } else if (object instanceof org.apache.pdfbox.cos.COSArray array) {
            for (var item : array) {
                collect(item, strings);
            }
        }
    }
}
