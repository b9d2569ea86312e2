package comparand.compose.manuscript;

import comparand.compose.results.ScreeningText;
import comparand.document.result.ScreeningResult;
import comparand.document.result.ScreeningResult.ScreenedResult;
import comparand.document.result.ScreeningResult.SearchResult;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** How the sources were looked for, as the log of screening has it. */
final class Searches {

    private final Writing writing;
    private final ScreeningResult screening;

    Searches(Writing writing, ScreeningResult screening) {
        this.writing = writing;
        this.screening = screening;
    }

    List<String> sentences() {
        var said = new ArrayList<String>();
        said.add(writing.say(
                "ms.say.search",
                "where",
                screening.searches().stream().map(SearchResult::where).collect(Collectors.joining("; ")),
                "last",
                ScreeningText.last(screening),
                "searches",
                Numbering.SEARCHES.named(writing),
                "records",
                Numbering.SCREENED.named(writing)));
        var searched = ScreeningText.who(screening.searches().stream().map(SearchResult::by));
        if (!searched.isEmpty()) {
            said.add(writing.say("ms.say.search-by", "by", String.join("; ", searched)));
        }
        var decided = ScreeningText.who(screening.records().stream().map(ScreenedResult::by));
        if (!decided.isEmpty()) {
            said.add(writing.say("ms.say.screened-by", "by", String.join("; ", decided)));
        }
        said.add(screening.terms());
        return said;
    }
}
