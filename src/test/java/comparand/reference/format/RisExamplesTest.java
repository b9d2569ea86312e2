package comparand.reference.format;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.model.library.PartialDate;
import comparand.model.library.SourceState;
import comparand.reference.Field;
import comparand.reference.Name;
import org.junit.jupiter.api.Test;

/**
 * RIS as its specification has it: "RIS Format Specifications" (Research Information Systems), and the two examples of the
 * encyclopedia article "RIS (file format)", in the forms of its revisions of 2008, 2018 and 2023.
 */
class RisExamplesTest {

    private static final String SHANNON = """
            TY  - JOUR
            AU  - Shannon, Claude E.
            PY  - 1948/07//
            TI  - A Mathematical Theory of Communication
            T2  - Bell System Technical Journal
            SP  - 379
            EP  - 423
            VL  - 27
            ER  -\s
            """;

    private static final String TURING = """
            TY  - JOUR
            T1  - On computable numbers, with an application to the Entscheidungsproblem
            A1  - Turing, Alan Mathison
            JO  - Proc. of London Mathematical Society
            VL  - 47
            IS  - 1
            SP  - 230
            EP  - 265
            Y1  - 1937
            ER  -\s
            """;

    @Test
    void twoReferencesOneWithTheTagsOf2011AndOneWithThoseOf2001() {
        var read = ReadReferences.of(SHANNON + TURING);

        assertThat(read.findings()).isEmpty();
        var shannon = read.references().get(0);
        assertThat(shannon.type()).isEqualTo("article-journal");
        assertThat(shannon.title()).isEqualTo("A Mathematical Theory of Communication");
        assertThat(shannon.authors()).containsExactly(Name.person("Shannon", "Claude E."));
        assertThat(shannon.issued().map(PartialDate::text)).contains("1948-07");
        assertThat(shannon.fields())
                .containsEntry(Field.CONTAINER_TITLE, "Bell System Technical Journal")
                .containsEntry(Field.PAGE, "379-423")
                .containsEntry(Field.VOLUME, "27")
                .hasSize(3);
        var turing = read.references().get(1);
        assertThat(turing.title()).isEqualTo("On computable numbers, with an application to the Entscheidungsproblem");
        assertThat(turing.authors()).containsExactly(Name.person("Turing", "Alan Mathison"));
        assertThat(turing.issued().map(PartialDate::text)).contains("1937");
        assertThat(turing.fields())
                .containsEntry(Field.CONTAINER_TITLE, "Proc. of London Mathematical Society")
                .containsEntry(Field.ISSUE, "1")
                .containsEntry(Field.PAGE, "230-265");
    }

    @Test
    void tagsStandInAnyOrderAndWindowsOrOtherLineEndsDoNotMatter() {
        var other = """
                TY  - JOUR
                VL  - 27
                EP  - 423
                TI  - A Mathematical Theory of Communication
                SP  - 379
                PY  - 1948/07//
                T2  - Bell System Technical Journal
                AU  - Shannon, Claude E.
                ER  -
                """;

        assertThat(ReadReferences.of(other).references())
                .isEqualTo(ReadReferences.of(SHANNON).references())
                .isEqualTo(ReadReferences.of(SHANNON.replace("\n", "\r\n")).references())
                .isEqualTo(ReadReferences.of(SHANNON.replace("\n", "\r")).references());
    }

    /** "If the information following any one tag is more than 70 characters long, it is allowable to insert a carriage return". */
    @Test
    void aLineWithoutATagGoesOnWithTheOneBefore() {
        var read = ReadReferences.lines(
                "TY  - JOUR", "TI  - A title that is longer", "  than one line,", "and goes on", "ER  - ");

        assertThat(read.only().title()).isEqualTo("A title that is longer than one line, and goes on");
        assertThat(read.findings()).isEmpty();
    }

    /** Authors are "Lastname, Firstname, Suffix". */
    @Test
    void namesHaveSuffixesParticlesAndBodiesAComma() {
        var read = ReadReferences.lines(
                "TY  - BOOK",
                "TI  - T",
                "AU  - Phillips,A.J.",
                "AU  - Phillips, Albert, Jr.",
                "AU  - van der Berg, Jan",
                "AU  - Invented Society, Section 2,",
                "A1  - Smith JA",
                "ER  - ");

        assertThat(read.only().authors())
                .containsExactly(
                        Name.person("Phillips", "A.J."),
                        new Name("Phillips", "Albert", "", "", "Jr.", ""),
                        new Name("Berg", "Jan", "van der", "", "", ""),
                        Name.body("Invented Society, Section 2"),
                        Name.person("Smith", "JA"));
    }

    @Test
    void addressesThatLeadToTheDoiSayNothingNewAndUnknownTagsAreKept() {
        var read = ReadReferences.lines(
                "TY  - JOUR",
                "TI  - T",
                "DO  - doi:10.5555/ABC",
                "UR  - https://doi.org/10.5555/abc",
                "UR  - https://example.org/x",
                "KW  - one",
                "KW  - two",
                "Z9  - what is this",
                "AB  - an abstract",
                "ER  - ");

        assertThat(read.only().fields())
                .containsEntry(Field.DOI, "10.5555/ABC")
                .containsEntry(Field.URL, "https://example.org/x")
                .hasSize(2);
        assertThat(read.only().kept("ris", "KW")).containsExactly("one", "two");
        assertThat(read.only().kept("ris", "Z9")).containsExactly("what is this");
        assertThat(read.only().kept()).hasSize(2);
    }

    @Test
    void aTitleThatBeginsWithRetractedIsARetraction() {
        var read = ReadReferences.lines(
                "TY  - JOUR",
                "TI  - RETRACTED: Minimal wear",
                "ER  - ",
                "TY  - JOUR",
                "TI  - Retracted papers in one field",
                "ER  - ");

        assertThat(read.references().get(0).title()).isEqualTo("Minimal wear");
        assertThat(read.references().get(0).notice()).map(n -> n.state()).contains(SourceState.RETRACTED);
        assertThat(read.references().get(1).notice()).isEmpty();
    }

    @Test
    void everyFaultIsNamedAtItsPlaceAndTheRestIsRead() {
        var read = ReadReferences.lines(
                "stray words",
                "TY  - JOUR",
                "TI  - First",
                "DO  - not a doi",
                "PY  - soon",
                "TY  - NONSENSE",
                "TI  - Second",
                "ER  - ",
                "AU  - Lost, A.",
                "ER  - ",
                "TY  - JOUR",
                "TI  - Third");

        assertThat(read.codes())
                .containsExactlyInAnyOrder(
                        "line-outside-reference 1:1",
                        "doi-form 4:7",
                        "date-unreadable 5:7",
                        "reference-not-closed 6:1",
                        "type-unknown 6:7",
                        "reference-without-type 9:1",
                        "title-missing 9:1",
                        "reference-not-closed 11:1");
        assertThat(read.references()).extracting(r -> r.title()).containsExactly("First", "Second", "Third");
    }
}
