package comparand.reference.format;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import comparand.diag.Diagnostic;
import comparand.model.library.PartialDate;
import comparand.reference.Field;
import comparand.reference.Name;
import java.io.StringReader;
import java.util.ArrayList;
import org.jbibtex.BibTeXParser;
import org.junit.jupiter.api.Test;

/**
 * BibTeX by entries of {@code xampl.bib} (Patashnik, distributed with BibTeX 0.99), the rules of "BibTeXing" (1988), and another
 * reader of BibTeX.
 */
class BibtexExamplesTest {

    private static final String XAMPL = """
            @STRING{stoc = " Symposium on the Theory of Computing"}
            @string{acm = "The OX Association for Computing Machinery"}
            @ARTICLE{article-full,
               author = {L[eslie] A. Aamport},
               title = {The Gnats and Gnus Document Preparation System},
               journal = {\\mbox{G-Animal's} Journal},
               year = 1986,
               volume = 41,
               number = 7,
               pages = "73+",
               month = jul,
               note = "This is a full ARTICLE entry",
            }
            The KEY field is here to override the KEY field in the journal being
            cross referenced (so is the NOTE field).
            @ARTICLE{article-crossref,
               crossref = {WHOLE-JOURNAL},
               key = "",
               title = {The Gnats and Gnus Document Preparation System},
               pages = "73+",
            }
            @INBOOK{inbook-full,
               author = "Donald E. Knuth",
               title = "Fundamental Algorithms",
               volume = 1,
               series = "The Art of Computer Programming",
               publisher = "Addison-Wesley",
               address = "Reading, Massachusetts",
               edition = "Second",
               month = "10~" # jan,
               year = "{\\noopsort{1973b}}1973",
               type = "Section",
               chapter = "1.2",
               pages = "10--119",
            }
            @MANUAL{manual-full,
               author = "Larry Manmaker",
               title = "The Definitive Computer Manual",
               organization = "Chips-R-Us",
               address = "Silicon Valley",
               edition = "Silver",
               month = apr # "-" # may,
               year = 1986,
            }
            @INPROCEEDINGS{inproceedings-full,
               author = "Alfred V. Oaho and Ullman, Jeffrey D. and Mihalis Yannakakis",
               title = "On Notions of Information Transfer in {VLSI} Circuits",
               editor = "Wizard V. Oz and Mihalis Yannakakis",
               booktitle = "Proc. Fifteenth Annual ACM" # stoc,
               number = 17,
               series = "All ACM Conferences",
               pages = "133--139",
               month = mar,
               year = 1983,
               address = "Boston",
               organization = acm,
               publisher = "Academic Press",
            }
            @ARTICLE{whole-journal,
               key = "GAJ",
               journal = {\\mbox{G-Animal's} Journal},
               year = 1986,
               volume = 41,
               number = 7,
               month = jul,
               note = {The entire issue is devoted to gnats and gnus},
            }
            """;

    @Test
    void entriesOfTheExampleAreReadWithStringsMonthsAndCrossReferences() {
        var read = ReadReferences.of(XAMPL);

        assertThat(read.codes()).containsExactly("title-missing 59:1");
        var all = read.references();
        assertThat(all)
                .extracting(
                        r -> r.type(), r -> r.issued().map(PartialDate::text).orElse(""))
                .containsExactly(
                        tuple("article-journal", "1986-07"),
                        tuple("article-journal", "1986-07"),
                        tuple("chapter", "1973-01-10"),
                        tuple("pamphlet", "1986"),
                        tuple("paper-conference", "1983-03"));
        assertThat(all.get(0).fields())
                .containsEntry(Field.CONTAINER_TITLE, "G-Animal's Journal")
                .containsEntry(Field.VOLUME, "41")
                .containsEntry(Field.ISSUE, "7")
                .containsEntry(Field.PAGE, "73+");
        assertThat(all.get(1).field(Field.CONTAINER_TITLE)).contains("G-Animal's Journal");
        assertThat(all.get(2).field(Field.PAGE)).contains("10-119");
        assertThat(all.get(3).kept("bibtex", "month")).containsExactly("apr-may");
        assertThat(all.get(3).field(Field.PUBLISHER)).contains("Chips-R-Us");
        assertThat(all.get(4).title()).isEqualTo("On Notions of Information Transfer in VLSI Circuits");
        assertThat(all.get(4).field(Field.CONTAINER_TITLE))
                .contains("Proc. Fifteenth Annual ACM Symposium on the Theory of Computing");
        assertThat(all.get(4).authors())
                .containsExactly(
                        Name.person("Oaho", "Alfred V."),
                        Name.person("Ullman", "Jeffrey D."),
                        Name.person("Yannakakis", "Mihalis"));
        assertThat(all.get(4).editors()).hasSize(2);
        assertThat(all.get(4).kept("bibtex", "organization"))
                .containsExactly("The OX Association for Computing Machinery");
    }

    /** Months apart, which the other reader spells out, and words between entries, which it does not read. */
    @Test
    void anotherReaderFindsTheSameEntriesFieldsAndValues() throws Exception {
        var mine = new BibtexScanner("refs", XAMPL, new ArrayList<Diagnostic>()).entries();
        var parser = new BibTeXParser() {
            @Override
            public void checkCrossReferenceResolution(org.jbibtex.Key key, org.jbibtex.BibTeXEntry entry) {
                // an entry may come before the one it refers to
            }
        };
        var theirs = parser.parse(new StringReader(XAMPL.replaceAll("(?m)^(The KEY|cross).*\n", "")))
                .getEntries();

        assertThat(mine)
                .extracting(BibtexEntry::key)
                .containsExactlyElementsOf(
                        theirs.keySet().stream().map(k -> k.getValue()).toList());
        for (var entry : mine) {
            var other = requireNonNull(theirs.get(new org.jbibtex.Key(entry.key())));
            assertThat(entry.fields()).hasSameSizeAs(other.getFields().keySet());
            for (var field : entry.fields()) {
                if (!field.name().equals("month")) {
                    assertThat(field.tex())
                            .as(entry.key() + " " + field.name())
                            .isEqualTo(other.getField(new org.jbibtex.Key(field.name()))
                                    .toUserString());
                }
            }
        }
    }

    /** "BibTeXing", section 4, and names of authors of TeX itself. */
    @Test
    void namesAreTakenApartAsBibtexDoes() {
        var names = ReadReferences.lines(
                        "@book{k, title={T}, author={Per Brinch Hansen and Brinch Hansen, Per and Ludwig van Beethoven and {Barnes and Noble, Inc.} and de la Vall{\\'e}e Poussin, Charles Louis Xavier Joseph and von Last, Jr, First and {\\'E}douard Masterly and Plato}}")
                .only()
                .authors();

        assertThat(names)
                .containsExactly(
                        Name.person("Hansen", "Per Brinch"),
                        Name.person("Brinch Hansen", "Per"),
                        new Name("Beethoven", "Ludwig", "van", "", "", ""),
                        Name.body("Barnes and Noble, Inc."),
                        new Name("Vallée Poussin", "Charles Louis Xavier Joseph", "de la", "", "", ""),
                        new Name("Last", "First", "von", "", "Jr", ""),
                        Name.person("Masterly", "Édouard"),
                        Name.person("Plato", ""));
    }

    @Test
    void listsThatEndWithOthersAreSaidToBeCut() {
        var read = ReadReferences.lines("@misc{k,", " title={T},", " author={Ann Ode and others}}");

        assertThat(read.only().authors()).containsExactly(Name.person("Ode", "Ann"));
        assertThat(read.codes()).containsExactly("authors-cut 3:2");
    }

    @Test
    void anEntryThatCannotBeReadIsNamedAndTheNextOneIsRead() {
        var read = ReadReferences.lines(
                "@article{one, title = {never closed, year = 2000",
                "",
                "@book(two, title = \"In parentheses {\"} x\", year=2001)",
                "@misc{three title={no comma}}",
                "@article{four, title={F}, title={G}, note = undefined # {x}, doi={https://doi.org/10.5555/a\\_b}}");

        assertThat(read.references()).extracting(r -> r.title()).containsExactly("In parentheses \" x", "F");
        assertThat(read.codes())
                .containsExactly(
                        "entry-unreadable 1:23", "entry-unreadable 4:7", "field-twice 5:27", "string-undefined 5:45");
        assertThat(read.references().get(1).field(Field.DOI)).contains("10.5555/a_b");
    }
}
