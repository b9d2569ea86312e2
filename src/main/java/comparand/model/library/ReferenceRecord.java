package comparand.model.library;

import comparand.diag.Located;
import java.util.List;
import java.util.Optional;

/** The reference of a source, in the item fields of CSL-JSON. */
public record ReferenceRecord(
        @Meaning("CSL item type, such as article-journal, paper-conference, report, pamphlet")
        Located<String> type,

        @Meaning("Title of the work") Located<String> title,
        @Meaning("Authors in order") List<PersonRecord> author,
        @Meaning("Editors in order") List<PersonRecord> editor,

        @Meaning("When it was issued: year, year-month or full date")
        Optional<Located<PartialDate>> issued,

        @Meaning("Journal or collection") @Key("container-title")
        Optional<Located<String>> containerTitle,

        @Meaning("The journal's name in short, as lists of references may print it") @Key("container-title-short")
        Optional<Located<String>> containerTitleShort,

        @Meaning("The series that a book or report belongs to") @Key("collection-title")
        Optional<Located<String>> collectionTitle,

        @Meaning("Volume") Optional<Located<String>> volume,
        @Meaning("Issue") Optional<Located<String>> issue,
        @Meaning("Number of a report, standard or patent") Optional<Located<String>> number,

        @Meaning("Pages") Optional<Located<String>> page,
        @Meaning("Edition") Optional<Located<String>> edition,

        @Meaning("Publisher, or the maker for instructions for use")
        Optional<Located<String>> publisher,

        @Meaning("Where the publisher sits") @Key("publisher-place")
        Optional<Located<String>> publisherPlace,

        @Meaning("Number of the serial") @Key("ISSN") Optional<Located<String>> issn,
        @Meaning("Number of the book") @Key("ISBN") Optional<Located<String>> isbn,
        @Meaning("Digital object identifier") @Key("DOI") Optional<Located<String>> doi,
        @Meaning("PubMed identifier") @Key("PMID") Optional<Located<String>> pmid,
        @Meaning("PubMed Central identifier") @Key("PMCID") Optional<Located<String>> pmcid,
        @Meaning("Address") @Key("URL") Optional<Located<String>> url,

        @Meaning(
                "What a file of references said beside all this, by its format and its own tags: an export has it again")
        Entries<Entries<OneOrMore<Located<String>>>> kept) {

    /** Authors, title, journal, year, volume and pages, DOI: enough to find the work. */
    public String text() {
        var out = new StringBuilder();
        if (!author.isEmpty()) {
            out.append(String.join(", ", author.stream().map(PersonRecord::text).toList()))
                    .append(". ");
        }
        out.append(title.value()).append('.');
        containerTitle
                .or(() -> publisher)
                .ifPresent(c -> out.append(' ').append(c.value()).append('.'));
        issued.ifPresent(d -> out.append(' ').append(d.value()));
        volume.ifPresent(v -> out.append(';').append(v.value()));
        issue.ifPresent(i -> out.append('(').append(i.value()).append(')'));
        page.ifPresent(p -> out.append(':').append(p.value()));
        if (issued.isPresent() || volume.isPresent()) {
            out.append('.');
        }
        doi.ifPresent(d -> out.append(" doi:").append(d.value()));
        return out.toString();
    }
}
