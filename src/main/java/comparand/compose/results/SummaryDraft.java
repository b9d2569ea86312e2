package comparand.compose.results;

import comparand.compose.text.Kebab;
import comparand.document.result.ComparandResult.LocalMeanResult;
import comparand.document.result.ComparandResult.RangeResult;
import comparand.document.result.ComparandResult.SummaryResult;
import comparand.document.result.LineResult;
import comparand.stat.Interval;
import java.util.List;
import java.util.Optional;

/** A summary as data, put together entry by entry; what is not set is absent. */
public final class SummaryDraft {

    private final String form;
    private Optional<Double> value = Optional.empty();
    private Optional<Double> sd = Optional.empty();
    private Optional<Double> sdIfSe = Optional.empty();
    private Optional<Double> se = Optional.empty();
    private Optional<Integer> n = Optional.empty();
    private Optional<RangeResult> interval = Optional.empty();
    private Optional<RangeResult> extent = Optional.empty();
    private Optional<Integer> events = Optional.empty();
    private Optional<Double> halfWidth = Optional.empty();
    private Optional<String> label = Optional.empty();

    private Optional<LineResult> line = Optional.empty();
    private Optional<LocalMeanResult> local = Optional.empty();
    private List<Double> each = List.of();

    public SummaryDraft(String form) {
        this.form = form;
    }

    public SummaryDraft value(double number) {
        value = Optional.of(number);
        return this;
    }

    public SummaryDraft sd(double number) {
        sd = Optional.of(number);
        return this;
    }

    public SummaryDraft sdIfSe(double number) {
        sdIfSe = Optional.of(number);
        return this;
    }

    public SummaryDraft se(double number) {
        se = Optional.of(number);
        return this;
    }

    public SummaryDraft n(int number) {
        n = Optional.of(number);
        return this;
    }

    public SummaryDraft interval(Interval limits) {
        interval = Optional.of(ComparandResults.range(limits));
        return this;
    }

    public SummaryDraft extent(double low, double high) {
        extent = Optional.of(new RangeResult(low, high));
        return this;
    }

    public SummaryDraft events(int number) {
        events = Optional.of(number);
        return this;
    }

    public SummaryDraft halfWidth(double number) {
        halfWidth = Optional.of(number);
        return this;
    }

    public SummaryDraft label(Enum<?> constant) {
        return label(Kebab.of(constant));
    }

    public SummaryDraft label(String text) {
        label = Optional.of(text);
        return this;
    }

    public SummaryDraft line(Optional<LineResult> data) {
        line = data;
        return this;
    }

    public SummaryDraft local(Optional<LocalMeanResult> mean) {
        local = mean;
        return this;
    }

    public SummaryDraft each(List<Double> results) {
        each = results;
        return this;
    }

    public SummaryResult shown(String text) {
        return new SummaryResult(
                form, value, sd, sdIfSe, se, n, interval, extent, events, halfWidth, label, text, line, local, each);
    }
}
