package comparand.reference;

import java.util.Optional;

/**
 * Why two references are taken to be of one work: the DOI is the same, else the PubMed identifier, else title, year and first
 * author are near-equal. It is a proposal, never more.
 *
 * @param reason as a clause, such as {@code the same DOI, 10.5555/a.1}
 */
public record Likeness(Rule rule, String reason) {

    /** By what they are alike, the surest first. */
    public enum Rule {
        DOI,
        PMID,
        TITLE
    }

    /** Online first and in print may lie in two years. */
    static final int YEARS = 1;

    /** Empty if nothing says that they are one work. */
    static Optional<Likeness> of(Reference a, Reference b) {
        var doi = a.field(Field.DOI);
        if (doi.isPresent() && doi.map(Doi::key).equals(b.field(Field.DOI).map(Doi::key))) {
            return Optional.of(new Likeness(Rule.DOI, "the same DOI, " + doi.get()));
        }
        var pmid = a.field(Field.PMID).map(Likeness::number);
        if (pmid.isPresent() && pmid.equals(b.field(Field.PMID).map(Likeness::number))) {
            return Optional.of(new Likeness(Rule.PMID, "the same PMID, " + pmid.get()));
        }
        boolean isTitle = years(a, b) <= YEARS
                && Stage.of(a) == Stage.of(b)
                && Persons.sameFirst(a, b)
                && Titles.alike(a.title(), b.title());
        return isTitle ? Optional.of(new Likeness(Rule.TITLE, title(a, b))) : Optional.empty();
    }

    private static String title(Reference a, Reference b) {
        boolean differ = a.field(Field.DOI).isPresent() && b.field(Field.DOI).isPresent();
        return "title, year and first author near-equal" + (differ ? ", though the DOIs differ" : "");
    }

    /** Years between two works; many if one has none. */
    static int years(Reference a, Reference b) {
        if (a.year().isEmpty() || b.year().isEmpty()) {
            return a.year().equals(b.year()) ? 0 : Integer.MAX_VALUE;
        }
        return Math.abs(a.year().get() - b.year().get());
    }

    static String number(String pmid) {
        return pmid.replaceFirst("^0+", "");
    }
}
