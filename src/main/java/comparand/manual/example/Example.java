package comparand.manual.example;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A wrong input: changes to a new library, and the command that finds what is wrong with it.
 *
 * @param given changes and commands that several examples begin with; done once and copied
 * @param steps further ones in their order; where the last is no command, the library is checked
 * @param rowLog whether it shows in the row log of the results, and not as a finding
 */
public record Example(List<JsonNode> given, List<JsonNode> steps, boolean rowLog) {

    private static final String CHECK = "check " + Bench.LIBRARY;

    public Example {
        given = List.copyOf(given);
        steps = List.copyOf(steps);
    }

    /**
     * An example after it was run.
     *
     * @param changes what was changed before, for a reader
     * @param command the line that was typed, without {@code comparand}
     * @param findings those it gave under the code it was run for, in the order printed
     */
    public record Shown(List<Change> changes, String command, List<Said> findings) {}

    /**
     * One change of a text.
     *
     * @param before empty where the text is new
     */
    public record Change(String file, String before, String after) {}

    /** The last command, as it is typed. */
    String command() {
        var last = steps.isEmpty() ? Optional.<JsonNode>empty() : Optional.of(steps.get(steps.size() - 1));
        return last.filter(s -> s.has("run")).map(s -> s.path("run").asText()).orElse(CHECK);
    }

    /** Sets it up, runs it, and gives what the tool says under a code. */
    public Shown run(Bench bench, String code) {
        try {
            var place = bench.place(given);
            var command = command();
            var before = steps.isEmpty() || !steps.get(steps.size() - 1).has("run")
                    ? steps
                    : steps.subList(0, steps.size() - 1);
            bench.carryOut(before, place);
            var run = bench.run(place, command);
            var said = rowLog
                    ? RowLogExcerpt.of(place, code)
                    : Said.in(run.out() + "\n" + run.err()).stream()
                            .filter(s -> s.code().equals(code))
                            .toList();
            if (said.isEmpty()) {
                throw new IllegalStateException("the example of %s does not show it: `comparand %s` said %s%s"
                        .formatted(code, command, run.out(), run.err()));
            }
            return new Shown(changes(), command, said);
        } catch (IOException e) {
            throw new IllegalStateException("the example of " + code + " cannot be set up", e);
        }
    }

    private List<Change> changes() {
        var changes = new ArrayList<Change>();
        for (var step : steps) {
            if (step.has("replace") && !step.has("repeat")) {
                changes.add(new Change(
                        Step.where(step),
                        step.path("replace").asText(),
                        step.path("by").asText()));
            }
        }
        return changes;
    }

    /** The folder results were written to. */
    static Path results(Path place) {
        return place.resolve("reports/example/results.json");
    }
}
