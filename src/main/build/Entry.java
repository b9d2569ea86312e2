import java.util.List;
import java.util.Map;

/**
 * One library or part of what is shipped, as its notice is printed. Empty where something is not known.
 *
 * @param files its jar below the tool's folder, or its files in the tool's own jar
 * @param texts licences and notices by file name
 */
record Entry(
        String name,
        String version,
        String licence,
        String home,
        String copyright,
        String note,
        List<String> files,
        Map<String, byte[]> texts) {

    /** The folder of its texts below {@code licences/}, and its name in the bill of materials. */
    String folder() {
        return name.replace(' ', '-') + "-" + version;
    }
}
