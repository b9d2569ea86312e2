package comparand.compose.manuscript;

import comparand.compose.text.Run;
import comparand.document.Block;
import comparand.model.library.SourceRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Where sources and cases went: counts that add up. */
final class Flow {

    private final Writing writing;
    private final Run run;
    private final Map<String, Integer> counts;

    Flow(Writing writing, Map<String, Integer> counts) {
        this.writing = writing;
        this.run = writing.run();
        this.counts = counts;
    }

    List<Block> blocks() {
        var sources = new ArrayList<String>();
        if (counts.containsKey("records-identified")) {
            sources.add(screened());
        }
        var all = run.names().sources().stream().map(SourceRecord::id).toList();
        if (!all.isEmpty()) {
            sources.add(writing.say(
                    "ms.say.flow-sources",
                    "a",
                    count("sources"),
                    "b",
                    count("sources-taking-part"),
                    "c",
                    count("sources-without-value"),
                    "refs",
                    writing.cite(all),
                    "aside",
                    Numbering.ASIDE.named(writing)));
            sources.add(writing.say(
                    "ms.say.flow-pairs",
                    "a",
                    count("pairs-published"),
                    "b",
                    count("pairs-published-compared"),
                    "c",
                    count("pairs-published-shown"),
                    "d",
                    count("values-unpaired"),
                    "results",
                    Numbering.RESULTS.named(writing)));
        }
        var blocks = new ArrayList<Block>();
        if (!sources.isEmpty()) {
            blocks.add(writing.prose("res_sources", sources));
        }
        var local = new ArrayList<String>();
        for (var study : run.dossier().studies()) {
            rows(study.value(), local);
        }
        label(local);
        local.add(writing.say("ms.say.characteristics", "table", Numbering.CHARACTERISTICS.named(writing)));
        blocks.add(writing.prose("res_local_material", local));
        return blocks;
    }

    private String screened() {
        return writing.say(
                "ms.say.flow-search",
                "a",
                count("records-identified"),
                "b",
                count("records-duplicate"),
                "c",
                count("records-screened"),
                "d",
                count("records-excluded"),
                "e",
                count("reports-sought"),
                "f",
                count("reports-not-retrieved"),
                "g",
                count("reports-assessed"),
                "h",
                count("reports-excluded"),
                "i",
                count("reports-included"),
                "j",
                count("studies-included"),
                "figure",
                writing.say("ms.figure", "n", Numbering.FIRST_FIGURE),
                "table",
                Numbering.SCREENED.named(writing));
    }

    private void rows(String id, List<String> said) {
        if (counts.containsKey("rows, " + id)) {
            said.add(writing.say(
                    "ms.say.flow-rows",
                    "study",
                    run.library().study(id).map(s -> s.title().value()).orElse(id),
                    "a",
                    count("rows, " + id),
                    "b",
                    count("rows-kept, " + id),
                    "c",
                    count("rows-dropped, " + id),
                    "d",
                    count("rows-held, " + id)));
        }
    }

    /** Small groups of patients stay hidden, so no share of one is given either. */
    private void label(List<String> said) {
        for (var use : run.compared().matched().evidence().log().label()) {
            if (use.outside() > 0 && use.of() >= run.dossier().smallestGroup()) {
                said.add(writing.say(
                        "ms.say.label",
                        "device",
                        run.names().device(use.device()),
                        "condition",
                        run.library()
                                .catalogue()
                                .condition(use.condition())
                                .map(c -> run.terms().named(c.name()))
                                .orElseGet(() -> run.terms().named(use.condition())),
                        "limit",
                        run.terms().quantity(use.limit()),
                        "outside",
                        writing.held(
                                "label " + use.study() + " " + use.device() + " " + use.condition(),
                                use.outside() + "/" + use.of()),
                        "units",
                        run.words().term("level", use.level()),
                        "study",
                        run.library()
                                .study(use.study())
                                .map(s -> s.title().value())
                                .orElse(use.study())));
            }
        }
    }

    /** A count that can be found again. */
    private String count(String name) {
        return writing.held("n " + name, String.valueOf(counts.getOrDefault(name, 0)));
    }
}
