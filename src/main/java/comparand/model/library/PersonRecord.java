package comparand.model.library;

import comparand.diag.Located;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** An author, in the fields of a CSL-JSON name. */
public record PersonRecord(
        @Meaning("Family name") Optional<Located<String>> family,
        @Meaning("Given names or initials") Optional<Located<String>> given,

        @Meaning("Words before the family name that belong to it, such as van der") @Key("non-dropping-particle")
        Optional<Located<String>> particle,

        @Meaning("Words between given and family name that a list of names leaves out, such as von")
        @Key("dropping-particle")
        Optional<Located<String>> droppingParticle,

        @Meaning("Such as Jr.") Optional<Located<String>> suffix,

        @Meaning("The whole name of a body that is not a person")
        Optional<Located<String>> literal) {

    /** Family name and initials, or the body's name. */
    public String text() {
        return literal.map(Located::value)
                .orElseGet(() -> Stream.of(particle, family, given.map(g -> g.map(PersonRecord::initials)), suffix)
                        .flatMap(Optional::stream)
                        .map(Located::value)
                        .collect(Collectors.joining(" ")));
    }

    private static String initials(String given) {
        return given.replaceAll("(\\p{L})\\p{L}*[ .]*", "$1");
    }
}
