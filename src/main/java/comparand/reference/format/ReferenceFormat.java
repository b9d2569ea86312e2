package comparand.reference.format;

import comparand.diag.Diagnostic;
import comparand.reference.Found;
import comparand.reference.Reference;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.regex.Pattern;

/** A format of reference files. */
public enum ReferenceFormat {
    /** The tagged format of Research Information Systems: two letters, two blanks, a hyphen. */
    RIS("ris", "RIS", "(?m)^\\s{0,3}TY {1,2}- ?"),
    /** The display format of MEDLINE, as PubMed exports it: a tag of up to four letters, a hyphen. */
    NBIB("nbib", "PubMed (nbib)", "(?m)^(?:PMID|OWN|STAT|DP|TI|BTI|FAU)\\s{0,2}- "),
    /** BibTeX, version 0.99. */
    BIBTEX("bibtex", "BibTeX", "(?m)^[^%\\n]{0,80}?@\\s*[A-Za-z]+\\s*[({]"),
    /** The input of the Citation Style Language. */
    CSL_JSON("csl-json", "CSL-JSON", "\\A\\s*(?:\\[\\s*(?:\\{|\\]|\\Z)|\\{\\s*\")");

    /** A tag of RIS or MEDLINE as the first thing of a file: what looks like BibTeX below it stands within a field. */
    private static final Pattern TAGGED = Pattern.compile("\\A\\s*[A-Z][A-Z0-9]{1,3} {0,2}- ");

    private final String word;
    private final String title;
    private final Pattern sign;

    ReferenceFormat(String word, String title, String sign) {
        this.word = word;
        this.title = title;
        this.sign = Pattern.compile(sign);
    }

    /** Its word on the command line and in records. */
    public String word() {
        return word;
    }

    /** How people call it. */
    public String title() {
        return title;
    }

    public static Optional<ReferenceFormat> named(String word) {
        return Arrays.stream(values()).filter(f -> f.word.equals(word)).findFirst();
    }

    /** The format of a text by what stands in it: the one whose sign comes first, of the tagged ones if it begins tagged. */
    static Optional<ReferenceFormat> recognised(String text) {
        return TAGGED.matcher(text).find()
                ? firstOf(text, RIS, NBIB).or(() -> firstOf(text, values()))
                : firstOf(text, values());
    }

    private static Optional<ReferenceFormat> firstOf(String text, ReferenceFormat... formats) {
        return Arrays.stream(formats)
                .map(f -> Map.entry(f, f.first(text)))
                .filter(e -> e.getValue() >= 0)
                .min(Comparator.comparingInt(Map.Entry::getValue))
                .map(Map.Entry::getKey);
    }

    private int first(String text) {
        var found = sign.matcher(text);
        return found.find() ? found.start() : -1;
    }

    /** All references of a text; every fault is added to the findings. */
    List<Found> read(String file, String text, List<Diagnostic> findings) {
        return switch (this) {
            case RIS -> new RisReader(file, findings).read(text);
            case NBIB -> new MedlineReader(file, findings).read(text);
            case BIBTEX -> new BibtexReader(file, text, findings).read();
            case CSL_JSON -> new CslReader(file, text, findings).read();
        };
    }

    /**
     * References as a file of this format, in the order of their names; the same references give the same text.
     *
     * @param references by a name that is plain letters, digits and hyphens; formats that need a key are given it
     */
    public String write(SortedMap<String, Reference> references) {
        return switch (this) {
            case RIS -> RisWriter.text(references.values());
            case NBIB -> MedlineWriter.text(references.values());
            case BIBTEX -> BibtexWriter.text(references);
            case CSL_JSON -> CslWriter.text(references);
        };
    }
}
