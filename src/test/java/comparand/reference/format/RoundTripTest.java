package comparand.reference.format;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.diag.Diagnostic;
import comparand.reference.Found;
import comparand.reference.Kept;
import comparand.reference.Reference;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

/** What is written in a format and read again is what it was, for everything the format can carry. */
class RoundTripTest {

    @Property(tries = 600)
    void risGivesBackWhatItWasGiven(@ForAll("ris") List<Reference> references) {
        comesBack(ReferenceFormat.RIS, references);
    }

    @Property(tries = 600)
    void medlineGivesBackWhatItWasGiven(@ForAll("nbib") List<Reference> references) {
        comesBack(ReferenceFormat.NBIB, references);
    }

    @Property(tries = 600)
    void bibtexGivesBackWhatItWasGiven(@ForAll("bibtex") List<Reference> references) {
        comesBack(ReferenceFormat.BIBTEX, references);
    }

    @Property(tries = 600)
    void cslGivesBackWhatItWasGiven(@ForAll("csl") List<Reference> references) {
        comesBack(ReferenceFormat.CSL_JSON, references);
    }

    @Provide
    Arbitrary<List<Reference>> ris() {
        return lists(ReferenceFormat.RIS);
    }

    @Provide
    Arbitrary<List<Reference>> nbib() {
        return lists(ReferenceFormat.NBIB);
    }

    @Provide
    Arbitrary<List<Reference>> bibtex() {
        return lists(ReferenceFormat.BIBTEX);
    }

    @Provide
    Arbitrary<List<Reference>> csl() {
        return lists(ReferenceFormat.CSL_JSON);
    }

    private static Arbitrary<List<Reference>> lists(ReferenceFormat format) {
        return Arbitraries.frequencyOf(
                Tuple.of(4, new AnyReference(format).references().list().ofSize(1)),
                Tuple.of(
                        1,
                        new AnyReference(format)
                                .references()
                                .list()
                                .ofMinSize(2)
                                .ofMaxSize(3)));
    }

    private static void comesBack(ReferenceFormat format, List<Reference> references) {
        var named = new TreeMap<String, Reference>();
        references.forEach(r -> named.put("source-" + (char) ('a' + named.size()), r));
        var text = format.write(named);
        var findings = new ArrayList<Diagnostic>();

        var read = ReferenceFile.read("any", text.getBytes(StandardCharsets.UTF_8), findings)
                .orElseThrow(() -> new AssertionError(text));

        assertThat(findings).as(text).isEmpty();
        assertThat(read.format()).isEqualTo(format);
        assertThat(read.references().stream().map(Found::reference).map(RoundTripTest::sorted))
                .as(text)
                .containsExactlyElementsOf(
                        references.stream().map(RoundTripTest::sorted).toList());
        assertThat(format.write(named)).isEqualTo(text);
    }

    /** What is kept has no order of its own among tags. */
    private static Reference sorted(Reference r) {
        return new Reference(
                r.type(),
                r.title(),
                r.authors(),
                r.editors(),
                r.issued(),
                r.fields(),
                r.notice(),
                r.kept().stream().sorted(Comparator.comparing(Kept::tag)).toList());
    }
}
