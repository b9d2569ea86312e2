package comparand.check;

import comparand.unit.Printed;

/**
 * What it checks: a spread with the wrong number of figures for its kind, a negative width, ends the wrong way round,
 * or ends that are printed alike.
 *
 * <p>Why it matters: an interval has two ends and a standard deviation one figure; anything else was misread.
 *
 * <p>What to write instead: {@code of: 4.6 mmHg} for sd, se and not stated; {@code of: [52 mmHg, 74 mmHg]} for ci95,
 * iqr and range.
 */
final class SpreadFigures implements Rule {

    @Override
    public String code() {
        return "spread-figures";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.values()
                // the spread of an error bar has its figures in the picture
                .filter(v -> v.value()
                        .readFromFigure()
                        .filter(r -> !r.errorBar().isEmpty())
                        .isEmpty())
                .forEach(v -> v.value().spread().ifPresent(spread -> {
                    var kind = spread.kind();
                    var figures = spread.figures();
                    if (figures.size() != kind.value().figures()) {
                        findings.stop(
                                kind.span(),
                                "a spread of kind `%s` has %s, and this one has %d"
                                        .formatted(
                                                kind.value().spelling(),
                                                words(kind.value().figures()),
                                                figures.size()),
                                "with the wrong figures no standard deviation can be found",
                                kind.value().figures() == 2
                                        ? "write `of: [low, high]`"
                                        : kind.value().figures() == 1
                                                ? "write `of:` with the one figure"
                                                : "leave `of:` out");
                    } else if (figures.size() == 1
                            && figures.get(0).value().number().value().signum() < 0) {
                        findings.stop(
                                figures.get(0).span(),
                                "a spread is not negative, got `%s`"
                                        .formatted(figures.get(0).value()),
                                "the sign was misread, or the figure is no spread",
                                "write the figure as printed");
                    } else if (figures.size() == 2
                            && reversed(figures.get(0).value(), figures.get(1).value())) {
                        findings.stop(
                                figures.get(0).span(),
                                "the ends of this spread run downwards",
                                "low and high were swapped, or one is misread",
                                "write the lower end first");
                    } else if (figures.size() == 2
                            && alike(figures.get(0).value(), figures.get(1).value())) {
                        findings.hold(
                                v,
                                figures.get(0).span(),
                                "both ends of this spread are the same: `%s` and `%s`"
                                        .formatted(
                                                figures.get(0).value(),
                                                figures.get(1).value()),
                                "the spread is hidden below the printed digits, and no standard deviation can be found",
                                "look for a table with more digits; or write `kind: not reported` and leave `of:` out");
                    }
                }));
    }

    private static boolean reversed(Printed low, Printed high) {
        return low.unit().convertsTo(high.unit())
                && low.in(high.unit()) > high.number().toDouble();
    }

    private static boolean alike(Printed low, Printed high) {
        return low.unit().convertsTo(high.unit())
                && low.in(high.unit()) == high.number().toDouble();
    }

    private static String words(int figures) {
        return figures == 2 ? "two figures" : figures == 1 ? "one figure" : "no figure";
    }
}
