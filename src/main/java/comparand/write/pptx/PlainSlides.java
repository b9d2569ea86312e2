package comparand.write.pptx;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** An empty presentation with the tool's own master: white, dark text, one layout with a title and nothing else. */
final class PlainSlides {

    private static final String FOLDER = "plain/";

    /** Parts of the package by their names in it. */
    private static final Map<String, String> PARTS = new TreeMap<>(Map.of(
            "[Content_Types].xml", "content-types.xml",
            "_rels/.rels", "package-relations.xml",
            "ppt/presentation.xml", "presentation.xml",
            "ppt/_rels/presentation.xml.rels", "presentation-relations.xml",
            "ppt/slideMasters/slideMaster1.xml", "master.xml",
            "ppt/slideMasters/_rels/slideMaster1.xml.rels", "master-relations.xml",
            "ppt/slideLayouts/slideLayout1.xml", "layout.xml",
            "ppt/slideLayouts/_rels/slideLayout1.xml.rels", "layout-relations.xml",
            "ppt/theme/theme1.xml", "theme.xml"));

    private PlainSlides() {}

    static byte[] bytes() throws IOException {
        var bytes = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(bytes)) {
            for (var part : PARTS.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(resource(part.getValue()));
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private static byte[] resource(String name) throws IOException {
        try (var in = PlainSlides.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IOException("the master for slides is missing from the program: " + name);
            }
            return in.readAllBytes();
        }
    }
}
