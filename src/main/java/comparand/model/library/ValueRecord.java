package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.Printed;
import comparand.unit.PrintedRange;
import java.util.List;
import java.util.Optional;

/** One published value, exactly as its source prints it. */
@ExactlyOne({"value", "mean", "median", "at-least", "at-most", "about", "range", "count", "read-from-figure", "claim"})
public record ValueRecord(
        @Meaning("Name of this value, unique in the library")
        Located<String> id,

        @Meaning("The device it is about") Located<String> device,
        @Meaning("The metric it is a value of") Located<String> metric,
        @Meaning("Exactly as printed, with spread and unit") Located<String> printed,

        @Meaning("A single figure that the source calls neither mean nor limit")
        Optional<Located<Printed>> value,

        @Meaning("A mean") Optional<Located<Printed>> mean,
        @Meaning("A median") Optional<Located<Printed>> median,

        @Meaning("A lower limit: the source says at least, or ≥") @Key("at-least")
        Optional<Located<Printed>> atLeast,

        @Meaning("An upper limit: the source says at most, up to, or ≤") @Key("at-most")
        Optional<Located<Printed>> atMost,

        @Meaning("A figure the source calls approximate") Optional<Located<Printed>> about,
        @Meaning("Two ends") Optional<Located<PrintedRange>> range,
        @Meaning("Events out of cases or units: 19 of 42") Optional<Located<EventCount>> count,

        @Meaning("Read from a figure, with its calibration") @Key("read-from-figure")
        Optional<FigureReadingRecord> readFromFigure,

        @Meaning("Words without a number, recorded and never compared")
        Optional<Located<String>> claim,

        @Meaning("The spread printed beside it") Optional<SpreadRecord> spread,

        @Meaning("How many of what: 5 units; or not reported")
        Optional<Located<StatedSize>> n,

        @Meaning("Which variant of the metric, aspect by aspect, or not reported")
        Entries<OneOrMore<Located<String>>> definition,

        @Meaning("Conditions of this value, over those of the source")
        Entries<Located<ConditionText>> conditions,

        @Meaning("Where it stands in the source") Optional<PlaceRecord> place,
        @Meaning("The words or the table cell, verbatim") Optional<Located<String>> quote,

        @Meaning("The quote in English, where it is in another language")
        Optional<Located<String>> translation,

        @Meaning("Who read it, and when") List<ReadingRecord> read,
        @Meaning("How differing readings were settled") Optional<SettledRecord> settled,

        @Meaning("What was recorded here before a correction")
        Optional<FormerValueRecord> was,

        @Meaning("The work this source quotes it from; a value seen only second-hand is held") @Key("quoted-from")
        Optional<Located<String>> quotedFrom,

        @Meaning("What the authors or the maker added in writing, such as a spread or a number that is not printed")
        Optional<LetterRecord> letter,

        @Meaning("A remark for the reader of the library") Optional<Located<String>> remark) {

    /** What its spread is: of an error bar that was read, not stated unless said. */
    public SpreadKind spreadKind() {
        return spread.map(s -> s.kind().value())
                .orElse(hasErrorBar() ? SpreadKind.NOT_STATED : SpreadKind.NOT_REPORTED);
    }

    /** Whether the source gives a spread, in figures or as an error bar. */
    public boolean hasSpread() {
        return hasErrorBar() || spread.filter(s -> !s.figures().isEmpty()).isPresent();
    }

    private boolean hasErrorBar() {
        return readFromFigure.filter(FigureReadingRecord::hasErrorBar).isPresent();
    }
}
