package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.DecimalSign;
import comparand.unit.PrintedNumber;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** One raw data file of a study, or one sheet of a workbook, and how to read it. */
public record DataFileRecord(
        @Meaning("The file, beside study.yaml: separated values (.csv, .tsv, .txt) or a workbook (.xlsx)")
        Located<String> file,

        @Meaning("In a workbook: the name of the sheet") Optional<Located<String>> sheet,

        @Meaning("In separated values: comma, semicolon, tab or bar")
        Optional<Located<Separator>> separator,

        @Meaning(
                "The decimal sign of numbers written as text, point or comma; a workbook whose numbers are numbers needs"
                        + " none")
        Optional<Located<DecimalSign>> decimal,

        @Meaning("In separated values: the encoding of its text, such as UTF-8, windows-1252, ISO-8859-1 or UTF-16")
        Optional<Located<String>> encoding,

        @Meaning(
                "The line, or the row of the sheet, that holds the headings: 1 unless declared; what stands above is not"
                        + " read")
        Optional<Located<PrintedNumber>> headerRow,

        @Meaning("What stands where a value is missing; an empty cell always is")
        Optional<OneOrMore<Located<String>>> missing,

        @Meaning(
                "cases, units or devices, for a file with one row for each of them, joined by its id to the rows of the"
                        + " other files")
        Optional<Located<Describes>> describes,

        @Meaning("Where all its rows come from, if from one place")
        Optional<Located<String>> centre,

        @Meaning("Every column by its heading") Entries<ColumnRecord> columns,

        @Meaning("The metrics to be computed from it; a file that describes cases, units or devices may give none")
        List<Located<String>> gives,

        @Meaning("The conditions whose steps make separate groups; variants of the definition always do")
        @Key("grouped-by")
        List<Located<String>> groupedBy,

        @Meaning("average or refuse: what to do when one unit was tested more than once at one step")
        Located<Repeats> repeats,

        @Meaning("Conditions that hold for every row") Entries<Located<ConditionText>> conditions,

        @Meaning("Variants of the definition that hold for every row")
        Entries<OneOrMore<Located<String>>> definition,

        @Meaning("Rows left out, with reasons") List<DropRecord> dropped,

        @Meaning("Rows left out because of what stands in a cell, with reasons")
        List<DropRuleRecord> dropWhen,

        @Meaning("What is done with a row that stands there a second time; refused, if left out")
        Optional<DuplicatesRecord> duplicates,

        @Meaning("Other limits than the catalogue's, by metric, with reasons")
        Entries<LimitRecord> limits,

        @Meaning("Questions left open; each stops the run until it is settled and its line deleted")
        List<Located<String>> undecided) {

    /** The file, and the sheet behind a comma: what tells the sources of a study's rows apart. */
    public String name() {
        return file.value() + sheet.map(s -> ", " + s.value()).orElse("");
    }

    /** Whether it is a workbook, by the ending of its name. */
    public boolean isWorkbook() {
        var lower = file.value().toLowerCase(Locale.ROOT);
        return lower.endsWith(".xlsx") || lower.endsWith(".xlsm");
    }

    /** Where the mapping speaks of how the file is split: for findings about that. */
    public Located<?> split() {
        return separator.<Located<?>>map(s -> s).or(() -> sheet).orElse(file);
    }
}
