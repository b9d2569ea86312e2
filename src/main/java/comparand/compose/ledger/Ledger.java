package comparand.compose.ledger;

import comparand.compose.text.Words;
import comparand.document.result.LedgerResult;
import comparand.document.result.LedgerResult.AnswerEntry;
import comparand.document.result.LedgerResult.ChangeEntry;
import comparand.document.result.LedgerResult.RunOfLedger;
import comparand.document.result.ResultSet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What changed between two runs of one dossier, and what that did to each answer. */
public final class Ledger {

    private final Side earlier;
    private final Side later;
    private final Words words;
    private final RuleChanges rules;
    private final SourceChanges sources;
    private final Map<Change, Integer> numbers = new LinkedHashMap<>();

    private Ledger(ResultSet before, ResultSet after, Words words) {
        this.words = words;
        this.earlier = new Side(before, words);
        this.later = new Side(after, words);
        this.rules = new RuleChanges(earlier, later);
        this.sources = new SourceChanges(earlier, later);
    }

    /**
     * The ledger of two runs.
     *
     * @param words in which it is told; answers stay as the runs said them
     */
    public static LedgerResult of(ResultSet before, ResultSet after, Words words) {
        return new Ledger(before, after, words).result();
    }

    private LedgerResult result() {
        Stream.of(
                        new ToolChanges(earlier, later).all(),
                        rules.all(),
                        sources.all(),
                        new ValueChanges(earlier, later).all(),
                        new LocalChanges(earlier, later).all(),
                        new PriceChanges(earlier, later).all())
                .flatMap(List::stream)
                .sorted(Change.ORDER)
                .forEach(c -> numbers.put(c, numbers.size() + 1));
        var answers = new Answers(earlier, later, List.copyOf(numbers.keySet()));
        var moved = answers.moved();
        var run = later.results().run();
        return new LedgerResult(
                LedgerResult.FORMAT,
                run.dossier(),
                run.title(),
                run.question(),
                run.inventedData() || earlier.results().run().inventedData(),
                run(earlier),
                run(later),
                numbers.keySet().stream().map(c -> entry(c, moved, answers)).toList(),
                leftAlone(),
                moved.stream().map(m -> entry(m, answers)).toList(),
                answers.same(),
                InputFiles.entries(earlier, later, numbers));
    }

    private static RunOfLedger run(Side side) {
        var run = side.results().run();
        return new RunOfLedger(
                run.asOf(),
                run.state(),
                run.tool(),
                run.fingerprint(),
                side.answers().size());
    }

    private ChangeEntry entry(Change c, List<Answers.Moved> moved, Answers answers) {
        return new ChangeEntry(
                number(c),
                c.group().name().toLowerCase(Locale.ROOT),
                c.what(),
                c.before(),
                c.after(),
                c.why(),
                effect(c, moved, answers));
    }

    private AnswerEntry entry(Answers.Moved m, Answers answers) {
        return new AnswerEntry(
                m.kind().name().toLowerCase(Locale.ROOT),
                m.concern().either().id(),
                m.concern().either().what(),
                answers.before(m),
                answers.after(m),
                m.causes().stream().map(this::number).sorted().toList(),
                answers.because(m, numbers));
    }

    private int number(Change c) {
        return numbers.getOrDefault(c, 0);
    }

    /** What a change did to the answers. */
    private String effect(Change c, List<Answers.Moved> moved, Answers answers) {
        var counts = moved.stream()
                .filter(m -> m.causes().contains(c))
                .collect(Collectors.groupingBy(Answers.Moved::kind, TreeMap::new, Collectors.counting()));
        if (!counts.isEmpty()) {
            return counts.entrySet().stream()
                    .map(e -> words.say("ledger.effect." + e.getKey().name(), "n", String.valueOf(e.getValue())))
                    .collect(Collectors.joining("; "));
        }
        return c.group() == Group.VALUE ? unmoved(c, answers) : words.say("ledger.no-answer");
    }

    /** A value that moved no answer: how it stood, and stands. */
    private String unmoved(Change c, Answers answers) {
        var standings = answers.standings(c.values());
        return standings.isEmpty()
                ? words.say("ledger.no-answer")
                : words.say("ledger.no-answer-stands", "standing", String.join(", ", standings));
    }

    /** A sentence for each group in which nothing changed. */
    private List<String> leftAlone() {
        var found = numbers.keySet().stream().map(Change::group).collect(Collectors.toSet());
        var alone = new ArrayList<String>();
        for (var group : Group.values()) {
            if (!found.contains(group)) {
                alone.add(group == Group.RULE ? rules.leftAlone() : leftAlone(group));
            }
        }
        alone.addAll(sources.lookedUp());
        return alone;
    }

    private String leftAlone(Group group) {
        return switch (group) {
            case TOOL ->
                words.say("ledger.alone.TOOL", "tool", later.results().run().tool());
            case QUESTION ->
                words.say(
                        "ledger.alone.QUESTION",
                        "n",
                        String.valueOf(later.questions().size()));
            case SOURCE ->
                words.say(
                        "ledger.alone.SOURCE",
                        "n",
                        String.valueOf(later.sources().size()));
            case VALUE -> words.say("ledger.alone.VALUE");
            case ASIDE ->
                words.say(
                        "ledger.alone.ASIDE",
                        "n",
                        String.valueOf(later.results().setAside().size()));
            case LOCAL -> words.say("ledger.alone.LOCAL");
            case PRICE -> words.say("ledger.alone.PRICE");
            case RULE -> rules.leftAlone();
        };
    }
}
