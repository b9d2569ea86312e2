package comparand.compose.figure;

import comparand.compose.text.Run;
import comparand.metric.Role;
import comparand.model.Comparand;
import comparand.model.Origin;
import comparand.model.library.SourceRecord;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** What is said below a figure: the conditions in words, what its lines mean, where the numbers come from. */
final class FigureNotes {

    private final Run run;

    FigureNotes(Run run) {
        this.run = run;
    }

    /** The conditions that decide and are the same for all local results drawn. */
    List<String> conditions(Collection<Comparand> local) {
        var said = new ArrayList<String>();
        if (local.isEmpty()) {
            return said;
        }
        var first = local.iterator().next();
        for (var use : first.metric().conditions()) {
            var id = use.condition().id();
            var texts = new LinkedHashSet<String>();
            local.forEach(c -> texts.add(c.condition(id).text()));
            boolean reported = first.condition(id).isReported();
            if (use.role() == Role.DECIDES && texts.size() == 1 && reported) {
                said.add(run.words()
                        .say(
                                "figure.condition",
                                "condition",
                                run.terms().named(use.condition().name()),
                                "is",
                                run.terms()
                                        .circumstance(
                                                Optional.of(use.condition()),
                                                texts.iterator().next())));
            }
        }
        return said.isEmpty()
                ? said
                : List.of(run.words().say("figure.note.conditions", "conditions", String.join(", ", said)));
    }

    /** The sources behind published values, by the numbers that locators use. */
    List<String> sources(Collection<Comparand> all) {
        var sources = new TreeMap<Integer, String>();
        all.forEach(c -> c.origin().fold(p -> sources.put(number(p), reference(p.source())), l -> ""));
        var studies = new LinkedHashSet<String>();
        all.forEach(c -> c.origin().fold(p -> false, l -> studies.add(l.study().id())));
        var named = new ArrayList<String>();
        studies.forEach(s -> named.add("L: " + s));
        sources.forEach((number, name) -> named.add(number + ": " + name));
        return named.isEmpty()
                ? List.of()
                : List.of(run.words().say("figure.note.sources", "sources", String.join("; ", named)));
    }

    private int number(Origin.Published published) {
        return run.names().number(published.source().id());
    }

    private static String reference(SourceRecord source) {
        return source.id();
    }

    String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
