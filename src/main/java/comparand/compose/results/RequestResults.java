package comparand.compose.results;

import comparand.compose.text.RequestText;
import comparand.compose.text.Run;
import comparand.document.result.RequestResult;
import comparand.document.result.RequestResult.ItemResult;
import comparand.document.result.RequestResult.WantedResult;
import comparand.metric.Metric;
import java.util.List;

/** Letters for missing facts as data. */
final class RequestResults {

    private RequestResults() {}

    static List<RequestResult> of(Run run) {
        return new RequestText(run)
                .letters().stream().map(RequestResults::letter).toList();
    }

    private static RequestResult letter(RequestText.Letter letter) {
        return new RequestResult(
                letter.id(),
                letter.to(),
                letter.maker() ? "maker" : "authors",
                letter.sources(),
                letter.items().stream().map(RequestResults::item).toList());
    }

    private static ItemResult item(RequestText.Item item) {
        return new ItemResult(
                item.about(),
                item.device(),
                item.metric().map(Metric::id).orElse(""),
                item.subject(),
                item.printed(),
                item.place(),
                item.quote(),
                item.wanted().stream()
                        .map(w -> new WantedResult(w.what(), w.form()))
                        .toList(),
                item.why());
    }
}
