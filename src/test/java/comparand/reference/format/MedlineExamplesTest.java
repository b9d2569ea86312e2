package comparand.reference.format;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.model.library.PartialDate;
import comparand.model.library.SourceState;
import comparand.reference.Field;
import comparand.reference.Name;
import org.junit.jupiter.api.Test;

/**
 * The display format of MEDLINE: "MEDLINE/PubMed Data Element (Field) Descriptions" (National Library of Medicine). The record of
 * the retracted article of 1998 and that of its notice of 2010 are written from memory in the form of that page; the citation of
 * the notice is that of the Lancet, 2010;375:445.
 */
class MedlineExamplesTest {

    private static final String RETRACTED = """
            PMID- 9500320
            OWN - NLM
            STAT- MEDLINE
            DCOM- 19980312
            IS  - 0140-6736 (Print)
            IS  - 0140-6736 (Linking)
            VI  - 351
            IP  - 9103
            DP  - 1998 Feb 28
            TI  - Ileal-lymphoid-nodular hyperplasia, non-specific colitis, and pervasive
                  developmental disorder in children.
            PG  - 637-41
            AB  - An abstract that is not kept.
            FAU - Wakefield, A J
            AU  - Wakefield AJ
            AD  - Inflammatory Bowel Disease Study Group.
            FAU - Murch, S H
            AU  - Murch SH
            LA  - eng
            PT  - Case Reports
            PT  - Journal Article
            PT  - Retracted Publication
            PL  - England
            TA  - Lancet
            JT  - Lancet (London, England)
            JID - 2985213R
            RIN - Lancet. 2010 Feb 6;375(9713):445. doi: 10.1016/S0140-6736(10)60175-4. PMID:
                  20137807
            CIN - Lancet. 1998 Feb 28;351(9103):611-2. PMID: 9500312
            EIN - Lancet 2004 Mar 6;363(9411):750
            AID - S0140673697110960 [pii]
            AID - 10.1016/s0140-6736(97)11096-0 [doi]
            SO  - Lancet. 1998 Feb 28;351(9103):637-41. doi: 10.1016/s0140-6736(97)11096-0.
            """;

    @Test
    void aRecordIsReadWithItsContinuationLinesNamesDateAndIdentifiers() {
        var read = ReadReferences.of(RETRACTED);
        var reference = read.only();

        assertThat(read.findings()).isEmpty();
        assertThat(reference.type()).isEqualTo("article-journal");
        assertThat(reference.title())
                .isEqualTo(
                        "Ileal-lymphoid-nodular hyperplasia, non-specific colitis, and pervasive developmental disorder in children");
        assertThat(reference.authors()).containsExactly(Name.person("Wakefield", "A J"), Name.person("Murch", "S H"));
        assertThat(reference.issued().map(PartialDate::text)).contains("1998-02-28");
        assertThat(reference.fields())
                .containsEntry(Field.CONTAINER_TITLE, "Lancet (London, England)")
                .containsEntry(Field.CONTAINER_TITLE_SHORT, "Lancet")
                .containsEntry(Field.VOLUME, "351")
                .containsEntry(Field.ISSUE, "9103")
                .containsEntry(Field.PAGE, "637-41")
                .containsEntry(Field.PMID, "9500320")
                .containsEntry(Field.DOI, "10.1016/s0140-6736(97)11096-0")
                .containsEntry(Field.ISSN, "0140-6736")
                .containsEntry(Field.LANGUAGE, "en")
                .containsEntry(Field.PUBLISHER_PLACE, "England");
    }

    @Test
    void theGravestNoticeIsTheStandingWithItsDateAndEveryTagIsKept() {
        var reference = ReadReferences.of(RETRACTED).only();

        assertThat(reference.notice()).hasValueSatisfying(n -> {
            assertThat(n.state()).isEqualTo(SourceState.RETRACTED);
            assertThat(n.since().map(PartialDate::text)).contains("2010-02-06");
            assertThat(n.text())
                    .startsWith("Retraction in: Lancet. 2010 Feb 6;375(9713):445.")
                    .endsWith("20137807");
        });
        assertThat(reference.kept("nbib", "EIN")).containsExactly("Lancet 2004 Mar 6;363(9411):750");
        assertThat(reference.kept("nbib", "CIN")).hasSize(1);
        assertThat(reference.kept("nbib", "PT")).containsExactly("Case Reports");
        assertThat(reference.kept("nbib", "AB")).isEmpty();
    }

    @Test
    void eachTagOfCommentsAndCorrectionsMeansWhatTheFieldDescriptionsSay() {
        assertThat(state("RIN - J. 2020;1:1.")).isEqualTo("RETRACTED");
        assertThat(state("PT  - Retracted Publication")).isEqualTo("RETRACTED");
        assertThat(state("ECI - J. 2020;1:1.")).isEqualTo("CONCERN");
        assertThat(state("EIN - J. 2020;1:1.")).isEqualTo("CORRECTED");
        assertThat(state("CRI - J. 2020;1:1.")).isEqualTo("CORRECTED");
        assertThat(state("PRIN- J. 2020;1:1.")).isEqualTo("CORRECTED");
        assertThat(state("CIN - J. 2020;1:1.")).isEqualTo("none");
        assertThat(state("CRF - J. 2020;1:1.")).isEqualTo("none");
        assertThat(state("UIN - J. 2020;1:1.")).isEqualTo("none");
        assertThat(state("ROF - J. 2020;1:1.")).isEqualTo("none");
        assertThat(state("PT  - Retraction of Publication")).isEqualTo("none");
    }

    private static String state(String line) {
        return ReadReferences.of("PMID- 1\nTI  - T.\n" + line + "\n")
                .only()
                .notice()
                .map(n -> n.state().name())
                .orElse("none");
    }

    @Test
    void datesNoCalendarHasGiveTheirYearAndAreKept() {
        for (var date : new String[] {"2020 Jan-Feb", "2020 Winter", "2020 Dec-2021 Jan", "2020 Sep 31"}) {
            var reference =
                    ReadReferences.of("PMID- 1\nTI  - T.\nDP  - " + date + "\n").only();

            assertThat(reference.year()).as(date).contains(2020);
            assertThat(reference.kept("nbib", "DP")).containsExactly(date);
        }
    }

    @Test
    void namesInShortBodiesSuffixesAndCutListsAreRead() {
        var read = ReadReferences.lines(
                "PMID- 1",
                "TI  - T?",
                "AU  - Smith JA Jr",
                "CN  - Invented Group",
                "FAU - de la Cruz, Juan 3rd",
                "AU  - de la Cruz J 3rd",
                "AU  - et al.");

        assertThat(read.only().authors())
                .containsExactly(
                        new Name("Smith", "JA", "", "", "Jr", ""),
                        Name.body("Invented Group"),
                        new Name("Cruz", "Juan", "de la", "", "3rd", ""));
        assertThat(read.only().title()).isEqualTo("T?");
        assertThat(read.codes()).containsExactly("authors-cut 7:7");
    }

    @Test
    void shortNamesMayStandBeforeFullOnes() {
        var read = ReadReferences.lines(
                "PMID- 1", "TI  - T.", "AU  - Doe J", "FAU - Doe, Jane", "AU  - Roe R", "FAU - Roe, Rick");

        assertThat(read.only().authors()).containsExactly(Name.person("Doe", "Jane"), Name.person("Roe", "Rick"));
    }

    @Test
    void recordsAreTakenApartByBlankLinesAndByTheirNumbers() {
        var read = ReadReferences.lines(
                "",
                "",
                "PMID- 1",
                "TI  - One.",
                "",
                "PMID- 2",
                "TI  - Two.",
                "PMID- 3",
                "TI  - Three.",
                "not indented");

        assertThat(read.references()).extracting(r -> r.title()).containsExactly("One", "Two", "Three");
        assertThat(read.codes()).containsExactly("line-outside-reference 10:1");
    }

    @Test
    void aFieldThatLooksLikeAnotherFormatDoesNotMakeTheFileOne() {
        var read = ReadReferences.lines(
                "VI  - 12", "IP  - @a{", "GN  - @b(", "      TY  - JOUR", "TI  - A title", "DP  - 2019 May");

        assertThat(read.findings()).isEmpty();
        assertThat(read.only().fields()).containsEntry(Field.ISSUE, "@a{");
    }
}
