package comparand.write.docx;

import java.math.BigInteger;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTP;

/** Places in a text that can be found again. Word processors tell names apart without regard to capitals. */
final class Bookmarks {

    /** Word processors cut longer names off. */
    static final int LONGEST = 40;

    private final Set<String> names = new HashSet<>();

    /** What is set into the paragraph by {@code content} gets a name. */
    void about(CTP paragraph, String name, Runnable content) {
        if (!name.matches("[A-Za-z][A-Za-z0-9_]*") || name.length() > LONGEST) {
            throw new IllegalArgumentException(
                    "a bookmark is at most %d letters, digits and underscores, got: %s".formatted(LONGEST, name));
        }
        if (!names.add(name.toLowerCase(Locale.ROOT))) {
            throw new IllegalArgumentException("two places are called " + name);
        }
        var id = BigInteger.valueOf(names.size());
        var start = paragraph.addNewBookmarkStart();
        start.setId(id);
        start.setName(name);
        content.run();
        paragraph.addNewBookmarkEnd().setId(id);
    }

    /** The bookmark of a section or figure, whose name may hold other characters. */
    static String of(String kind, String name) {
        var plain = kind + "_" + name.replaceAll("[^A-Za-z0-9_]", "_");
        return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST);
    }
}
