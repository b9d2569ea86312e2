package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.DecimalSign;
import java.util.List;
import java.util.Optional;

/** One raw data file of a study and how to read it. */
public record DataFileRecord(
        @Meaning("The file, beside study.yaml") Located<String> file,
        @Meaning("comma, semicolon or tab") Located<Separator> separator,

        @Meaning("The decimal sign of its numbers: point or comma")
        Located<DecimalSign> decimal,

        @Meaning("The encoding of its text, such as UTF-8") Located<String> encoding,

        @Meaning("What stands where a value is missing; an empty cell always is")
        Optional<OneOrMore<Located<String>>> missing,

        @Meaning("Every column by its heading") Entries<ColumnRecord> columns,

        @Meaning("The metrics to be computed from it") @AtLeast(1)
        List<Located<String>> gives,

        @Meaning("The conditions whose steps make separate groups; variants of the definition always do")
        @Key("grouped-by")
        List<Located<String>> groupedBy,

        @Meaning("average or refuse: what to do when one unit was tested more than once at one step")
        Located<Repeats> repeats,

        @Meaning("Conditions that hold for every row") Entries<Located<ConditionText>> conditions,

        @Meaning("Variants of the definition that hold for every row")
        Entries<OneOrMore<Located<String>>> definition,

        @Meaning("Rows left out, with reasons") List<DropRecord> dropped) {}
