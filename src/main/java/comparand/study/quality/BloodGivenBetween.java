package comparand.study.quality;

import comparand.metric.Definition;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Checks that no blood, plasma or platelets were given, and no blood concentrated, between the two samples of a change
 * that is corrected for dilution. It matters because a correction by red cells fails as soon as red cells are given,
 * which is the rule in small children whose prime holds donor blood; unknown counts as given. The row is kept from the
 * corrected changes, not from the plain one. What to do: say it where it is known.
 */
final class BloodGivenBetween implements QualityRule {

    private static final List<String> BEFORE = List.of("platelet-count-before", "fibrinogen-before");
    private static final Effect EFFECT = new Effect.Exclude(
            Set.of("corrected-platelet-change", "corrected-fibrinogen-change"),
            Definition.NONE.with("dilution-correction", List.of("none")),
            false);

    @Override
    public String code() {
        return "blood-given-between-samples";
    }

    @Override
    public String why() {
        return "a correction by red cells fails as soon as red cells are given";
    }

    @Override
    public String fix() {
        return "map a column to `{condition: transfusion}` with the words none and given, or use `dilution-correction: none`";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        boolean changed = BEFORE.stream().anyMatch(id -> row.given(id).isPresent());
        var transfusion = row.word("transfusion");
        return changed && transfusion.filter("none"::equals).isEmpty()
                ? Optional.of(new QualityFinding(
                        transfusion.isPresent()
                                ? "`transfusion` is `%s` between the samples: dilution cannot be corrected for"
                                        .formatted(transfusion.get())
                                : "`transfusion` between the samples is not reported: dilution cannot be corrected for",
                        EFFECT))
                : Optional.empty();
    }
}
