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
        if (counts.containsKey("records-read")) {
            sources.add(item(
                    "ms.say.flow-search",
                    List.of(
                            "records-found",
                            "records-twice",
                            "records-excluded",
                            "records-not-obtained",
                            "records-read")));
        }
        var all = run.names().sources().stream().map(SourceRecord::id).toList();
        if (!all.isEmpty()) {
            sources.add(item(
                    "ms.say.flow-sources",
                    List.of("sources", "sources-taking-part", "sources-without-value"),
                    "refs",
                    writing.cite(all),
                    "aside",
                    Numbering.ASIDE.named(writing)));
            sources.add(item(
                    "ms.say.flow-pairs",
                    List.of("pairs-published", "pairs-published-compared", "pairs-published-shown", "values-unpaired"),
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

    private void rows(String id, List<String> said) {
        if (counts.containsKey("rows, " + id)) {
            said.add(item(
                    "ms.say.flow-rows",
                    List.of("rows, " + id, "rows-kept, " + id, "rows-dropped, " + id, "rows-held, " + id),
                    "study",
                    run.library().study(id).map(s -> s.title().value()).orElse(id)));
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
                                .orElse(use.condition()),
                        "limit",
                        run.terms().quantity(use.limit()),
                        "outside",
                        writing.held(
                                "label " + use.study() + " " + use.device() + " " + use.condition(),
                                use.outside() + "/" + use.of()),
                        "units",
                        use.level(),
                        "study",
                        run.library()
                                .study(use.study())
                                .map(s -> s.title().value())
                                .orElse(use.study())));
            }
        }
    }

    /** A sentence whose counts can be found again; they stand in its places in the order given, {@code a}, {@code b} ... */
    private String item(String key, List<String> names, String... places) {
        var all = new ArrayList<>(List.of(places));
        for (int i = 0; i < names.size(); i++) {
            all.add(String.valueOf((char) ('a' + i)));
            all.add(writing.held("n " + names.get(i), String.valueOf(counts.getOrDefault(names.get(i), 0))));
        }
        return writing.say(key, all.toArray(String[]::new));
    }
}
