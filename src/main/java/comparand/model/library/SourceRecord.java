package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.DecimalSign;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One source of published values, and the values taken from it. */
@Meaning("A document that values are taken from, kept in sources/")
public record SourceRecord(
        @Meaning("Name of the source: the file name without its ending")
        Located<String> source,

        @Meaning("What kind of document it is") Located<SourceKind> kind,

        @Meaning("The decimal sign of the numbers in this file; point unless declared")
        Optional<Located<DecimalSign>> decimal,

        @Meaning("How to cite it, in the fields of CSL-JSON")
        ReferenceRecord reference,

        @Meaning("Revision and date; instructions for use must have them")
        Optional<DocumentRecord> document,

        @Meaning("Language of the document, such as de") Optional<Located<String>> language,

        @Meaning("Who paid: independent, maker, mixed or not reported")
        Located<Funding> funding,

        @Meaning("Whether it still stands") StatusRecord status,

        @Meaning("A source in this library that reports the same patients or runs") @Key("same-study-as")
        Optional<Located<String>> sameStudyAs,

        @Meaning("Where and when its patients were treated") Optional<CohortRecord> cohort,

        @Meaning("Conditions that hold for every value below, unless the value says otherwise")
        Entries<Located<ConditionText>> conditions,

        @Meaning("The values taken from it") List<ValueRecord> values,
        @Meaning("A remark for the reader of the library") Optional<Located<String>> remark) {

    public String id() {
        return source.value();
    }

    /** The conditions of a value: its own over those of the source. */
    public Entries<Located<ConditionText>> conditionsOf(ValueRecord value) {
        var merged = new ArrayList<>(value.conditions().list());
        conditions.stream()
                .filter(e -> !value.conditions().has(e.key().value()))
                .forEach(merged::add);
        return new Entries<>(merged);
    }
}
