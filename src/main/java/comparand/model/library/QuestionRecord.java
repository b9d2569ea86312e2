package comparand.model.library;

import comparand.diag.Located;
import comparand.metric.Better;
import java.util.Optional;

/** One question of a dossier: a metric, and the smallest difference in it that would matter. */
public record QuestionRecord(
        @Meaning("The metric") Located<String> metric,
        @Meaning("The question in the readers' own words") Located<String> asks,

        @Meaning("The smallest difference that would change the decision; or none, to print intervals only")
        Optional<Located<StatedMargin>> margin,

        @Meaning("Why that margin") Optional<Located<String>> reason,

        @Meaning("Which way is favourable here: more, less or neither")
        Optional<Located<Better>> better,

        @Meaning("The variant of the metric on which all are compared")
        Entries<OneOrMore<Located<String>>> definition,

        @Meaning("The steps that are compared between devices; all steps that two devices share unless given")
        Optional<StepsRecord> at,

        @Meaning("What a further measurement is to be planned by")
        Optional<PlanRecord> plan) {}
