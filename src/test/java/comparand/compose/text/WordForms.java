package comparand.compose.text;

import comparand.metric.Better;
import comparand.metric.Effect;
import comparand.model.Answer;
import comparand.model.ConditionVerdict;
import comparand.model.Missing;
import comparand.model.Needed;
import comparand.model.PlanAim;
import comparand.model.Planned;
import comparand.model.PlanningSd;
import comparand.model.SetAside;
import comparand.model.SourcesTogether;
import comparand.model.Standing;
import comparand.model.Step;
import comparand.model.Verdict;
import comparand.model.library.ScreeningFate;
import comparand.model.library.SearchKind;
import comparand.model.template.ManuscriptTemplate;
import comparand.stat.LocalMean;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** How keys of words are formed: what is added to their beginnings, and which of them are sentences. */
final class WordForms {

    /** Why a value stands alone. */
    static final List<String> ALONE = List.of("claim", "no-local", "no-present");

    /** How an answer is not the same in two runs. */
    private static final List<String> LEDGER_KINDS =
            List.of("ANOTHER", "GONE", "NEW", "REASONS", "NUMBERS", "WORDS", "ADJUSTED");

    /** What is added to a beginning while the program runs. */
    static final Map<String, Collection<String>> ENDINGS = Map.ofEntries(
            Map.entry(
                    "ledger.group.", List.of("TOOL", "QUESTION", "RULE", "SOURCE", "VALUE", "ASIDE", "LOCAL", "PRICE")),
            Map.entry("ledger.kind.", LEDGER_KINDS),
            Map.entry("ledger.effect.", LEDGER_KINDS),
            Map.entry("step.", names(Step.Kind.values())),
            Map.entry("centres.mean.", names(LocalMean.Rule.values())),
            Map.entry("figure.series.", List.of("SAME", "SAME_AFTER_CONVERSION", "CONDITIONS_DIFFER", "NOT_REPORTED")),
            Map.entry("together.place.", names(SourcesTogether.Place.values())),
            Map.entry("together.without.", List.of("same", "other", "few")),
            Map.entry("together.label.", List.of("ESTIMATED", "DIGITISED")),
            Map.entry("standing.", names(Standing.values())),
            Map.entry("map.", names(Standing.values())),
            Map.entry("verdict.", names(Verdict.values())),
            Map.entry("verdict.nominal.", names(Verdict.values())),
            Map.entry("answer.untestable.", names(Answer.NotTestable.Why.values())),
            Map.entry("answer.lacking.", WordCalls.inFile("AnswerText.java", "-> \"(\\w+)\";")),
            Map.entry("better.", names(Better.values())),
            Map.entry("fate.", List.of("dropped", "held", "remarked")),
            Map.entry("favourable.", names(Better.values())),
            Map.entry("unpaired.", ALONE),
            Map.entry("to-pair.", ALONE),
            Map.entry("mark.", names(ConditionVerdict.Mark.values())),
            Map.entry("effect.", names(Effect.values())),
            Map.entry("role.", List.of("decides", "qualifies")),
            Map.entry("screened.", names(ScreeningFate.values())),
            Map.entry("searched.", names(SearchKind.values())),
            Map.entry("aside.", names(SetAside.Reason.values())),
            Map.entry("distortion.number.", List.of("higher", "lower")),
            Map.entry("distortion.device.", List.of("higher", "lower", "none", "unknown")),
            Map.entry("distortion.", List.of("none", "unknown")),
            Map.entry("gap.", List.of("margin", "no-margin", "declared", "asked", "unlike", "sources")),
            Map.entry("missing.", names(Missing.What.values())),
            Map.entry("settle.", names(PlanAim.Kind.values())),
            Map.entry("settle.sd.", names(PlanningSd.From.values())),
            Map.entry("needed.", names(Needed.Kind.values())),
            Map.entry("needed.brief.", names(Needed.Kind.values())),
            Map.entry("needed.where.", names(Planned.Groups.values())),
            Map.entry("sheet.", WordCalls.inFile("Workbook.java", "sheets\\.put\\(\"([a-z-]+)\"")),
            Map.entry("sheet.about.", WordCalls.inFile("Workbook.java", "sheets\\.put\\(\"([a-z-]+)\"")),
            Map.entry("ms.section.", names(ManuscriptTemplate.Section.values())),
            Map.entry(
                    "ms.conversion.",
                    Stream.of(Step.Kind.values())
                            .filter(Step.Kind::converts)
                            .map(Enum::name)
                            .toList()),
            Map.entry("ms.abbr.", List.of("BTPS", "CI", "DOI", "NA", "NR", "SD", "SE", "STPD")),
            Map.entry(
                    "ms.entry.",
                    List.of(
                            "authors",
                            "ethics",
                            "registration",
                            "eligibility",
                            "allocation",
                            "funding",
                            "data-availability")),
            Map.entry(
                    "ms.say.limitation.",
                    List.of(
                            "differs",
                            "not-reported",
                            "label",
                            "quantity",
                            "figure",
                            "either-spread",
                            "limit",
                            "estimated",
                            "digitised",
                            "paid-for",
                            "read-once",
                            "hospitals",
                            "many",
                            "blood")),
            Map.entry("key.", WordCalls.keyRows()),
            Map.entry("talk.title.full.", names(Verdict.values())),
            Map.entry("talk.title.plain.", names(Verdict.values())),
            Map.entry("talk.title.brief.", names(Verdict.values())),
            Map.entry("caution.", List.of("1", "2", "3", "4", "5", "6", "7", "8")));

    /** Kinds of text by how their keys begin: those that are sentences end with a full stop, the others never do. */
    static final Set<String> SENTENCES = Set.of(
            "distortion.",
            "qualifies.",
            "caution.",
            "better.",
            "margin-line",
            "scenario.lead",
            "scenario.none",
            "scenario.some",
            "table.said.",
            "talk.say.",
            "talk.dont.",
            "talk.take",
            "talk.answer",
            "talk.rider",
            "talk.question.decision",
            "talk.question.presenter",
            "talk.question.devices",
            "talk.question.interests",
            "talk.not-compared.none",
            "talk.not-known.none",
            "gaps.",
            "matters.",
            "settle.",
            "ms.say.",
            "figure.note.",
            "ledger.counts",
            "ledger.note",
            "figure.message.",
            "figure.alt.",
            "request.why.",
            "letter.says.",
            "committee.",
            "page.say.",
            "table.no-local",
            "table.no-published");

    private WordForms() {}

    private static List<String> names(Enum<?>[] values) {
        return Stream.of(values).map(Enum::name).toList();
    }
}
