package comparand.manual;

import comparand.metric.Gathering;
import java.math.BigDecimal;
import java.util.stream.Collectors;

/** In words, how rows become one result. */
public final class GatheringText implements Gathering.Cases<String> {

    private GatheringText() {}

    public static String of(Gathering gathering) {
        return gathering.fold(new GatheringText());
    }

    @Override
    public String eachRow(Gathering.EachRow way) {
        return "the formula per row, the mean of each unit or case, then the mean over all";
    }

    @Override
    public String total(Gathering.Total way) {
        return "the formula per row, summed over the rows of each unit, run or case";
    }

    @Override
    public String sums(Gathering.Sums way) {
        return switch (way.over()) {
            case MEMBER -> "inputs summed over the rows of each unit, run or case before the formula, then the mean";
            case GROUP -> "inputs summed over all rows of all units or cases, the formula applied once";
        };
    }

    @Override
    public String median(Gathering.Median way) {
        return "the median over units, runs or cases, each by " + of(way.each());
    }

    @Override
    public String fit(Gathering.Fit way) {
        var form = switch (way.form()) {
            case WITH_INTERCEPT -> "with intercept";
            case THROUGH_ORIGIN -> "through the origin";
        };
        var over = switch (way.over()) {
            case MEMBER -> "through the rows of each unit or case, then the mean";
            case GROUP -> "through one point per unit or case";
        };
        return "slope of %s on %s, least squares %s, %s".formatted(way.yInput(), way.xInput(), form, over);
    }

    @Override
    public String crossing(Gathering.Crossing way) {
        return "%s at which %s falls to %s, linear between neighbours of each unit; not read off beyond"
                .formatted(way.xInput(), way.yInput(), plain(way.level()));
    }

    @Override
    public String lowest(Gathering.Lowest way) {
        return "the lowest of: "
                + way.crossings().stream().map(GatheringText::of).collect(Collectors.joining("; "));
    }

    private static String plain(double level) {
        return BigDecimal.valueOf(level).stripTrailingZeros().toPlainString();
    }
}
