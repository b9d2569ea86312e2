package comparand.model.library;

import comparand.diag.Located;
import comparand.metric.Role;
import java.util.List;
import java.util.Optional;

/** A respect in which definitions of a declared metric differ in print. */
public record AspectRecord(
        @Meaning("The key under definition:, or parts for the parts a value covers")
        Located<String> aspect,

        @Meaning("Its name in sentences") Located<String> name,

        @Meaning("decides, decides-within-device or qualifies")
        Located<Role> role,

        @Meaning("For a choice: the variant local results follow")
        Optional<Located<String>> usual,

        @Meaning("For a choice: the variants") List<VariantRecord> variants,
        @Meaning("For parts: the parts there are") Optional<OneOrMore<Located<String>>> parts,

        @Meaning("For parts: yes if the whole is the sum of its parts")
        Optional<Located<YesNo>> additive) {}
