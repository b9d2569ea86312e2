package comparand.intake;

import comparand.document.form.FormList.Word;
import comparand.intake.ConditionPiece.Weight;
import comparand.metric.Aspect;
import comparand.metric.Condition;
import comparand.metric.Metric;
import comparand.metric.Role;
import comparand.model.library.ConditionText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Everything a published value is made from, in the order of its record. */
final class ValuePieces {

    static final Slot ID = Slot.text(
            "The value",
            "id",
            "A name for this value?",
            "A short name, unique in the library. Empty: one is given to it.");

    private static final Slot FURTHER = Slot.text(
            ConditionPiece.GROUP,
            "further conditions",
            "Which further conditions does the source state?",
            "Names of conditions with commas between them; empty for none.");

    /** What is known of a source while a value of it is entered. */
    interface KnownSource {

        /** Whether it states a condition for all of its values. */
        boolean states(String source, String condition);

        /** Whether a correction of it was published. */
        boolean isCorrected(String source);

        /** Nothing: the whole form is there to be filled. */
        static KnownSource none() {
            return new KnownSource() {
                @Override
                public boolean states(String source, String condition) {
                    return false;
                }

                @Override
                public boolean isCorrected(String source) {
                    return false;
                }
            };
        }
    }

    private final Scope scope;
    private final KnownSource known;
    private final Slot source;
    private final Slot device;
    private final Slot metric;
    private final List<Piece> reading = ReadingPieces.of(Scope.units());
    private final List<Piece> pieces = new ArrayList<>();

    /**
     * The pieces of a value.
     *
     * @param known what is known of the source of a value
     */
    ValuePieces(Scope scope, Reader reader, KnownSource known) {
        this.scope = scope;
        this.known = known;
        source = offered(
                "source",
                "From which source?",
                "The name of the source, from the list or from the sheet Sources.",
                scope.sourceWords());
        device = offered("device", "Which device is it about?", "The device the figure is about.", scope.deviceWords());
        metric = Slot.word(
                "The value",
                "metric",
                "What was measured?",
                "The metric, from the list; what each means stands on the sheet Words.",
                scope.metricWords());
        build(reader);
    }

    /** A list to choose from; free text where the library has none of the kind yet. */
    private static Slot offered(String heading, String question, String help, List<Word> words) {
        return words.isEmpty()
                ? Slot.text("The value", heading, question, help)
                : Slot.suggested("The value", heading, question, help, words);
    }

    /** The pieces of a form, in which everything is there to be filled. */
    static ValuePieces ofForm(Scope scope, Reader reader) {
        return new ValuePieces(scope, reader, KnownSource.none());
    }

    private void build(Reader reader) {
        var units = Scope.units();
        pieces.add(TextPiece.of("id", ID));
        pieces.add(TextPiece.needed("device", device));
        pieces.add(TextPiece.needed("metric", metric));
        pieces.add(TextPiece.needed(
                "printed",
                Slot.text(
                        "The figure",
                        "as printed",
                        "What is printed, letter by letter?",
                        "Exactly as printed, with spread and unit, such as 51.9 (SD 3.1) mmHg.")));
        pieces.add(new FigurePiece(units));
        pieces.addAll(reading);
        pieces.add(new SpreadPiece(units));
        pieces.add(new SizePiece());
        scope.aspects().forEach((id, aspects) -> pieces.add(aspect(id, aspects)));
        pieces.add(new AskedPiece(FURTHER));
        scope.conditions().forEach(c -> pieces.add(new ConditionPiece(c, a -> weight(a, c))));
        pieces.addAll(PlacePieces.of());
        pieces.add(TextPiece.needed(
                "quote",
                Slot.text(
                        "Place and quote",
                        "quote",
                        "The words or the table cell, verbatim?",
                        "At most 300 characters in the language of the source; of a table: row label | column label | cell. The number"
                                + " must occur in it.")));
        pieces.add(TextPiece.of(
                "translation",
                Slot.text(
                        "Place and quote",
                        "translation",
                        "The quote in English, if it is in another language?",
                        "Only where the quote is in another language.")));
        pieces.add(new ReadersPiece(reader));
        former(units);
        pieces.add(TextPiece.of(
                "quoted-from",
                Slot.text(
                        "Place and quote",
                        "quoted from",
                        "Does the source quote it from another work? Which?",
                        "Only where the source says \"as cited in\". Such a value is kept out of comparisons.")));
        pieces.addAll(LetterPieces.of());
        pieces.add(TextPiece.of(
                "remark",
                Slot.text("Remark", "remark", "Anything a successor should know?", "A remark for the library.")));
    }

    /** How readings that differed were settled, by workbook only; and what stood here before a correction. */
    private void former(List<Word> units) {
        var group = "Settled and corrected";
        pieces.add(TextPiece.of(
                "settled/by",
                Slot.text(group, "settled by", "Who settled it?", "Where two readers differed."),
                a -> false));
        pieces.add(TextPiece.of("settled/on", Slot.date(group, "settled on", "When?", "Year-month-day."), a -> false));
        pieces.add(TextPiece.of(
                "settled/reason",
                Slot.text(group, "settled because", "Why?", "Why the value written here is the right one."),
                a -> false));
        Predicate<Answers> corrected =
                a -> a.text(source).filter(known::isCorrected).isPresent();
        var value = new Quantity(
                Slot.number(
                        group,
                        "earlier value",
                        "What stood here before the correction, if it was this figure that changed?",
                        "The figure before the correction; empty if this one did not change."),
                Slot.suggested(group, "earlier value, unit", "In which unit?", "The unit as printed.", units));
        Predicate<Answers> changed = a -> a.text(value.number()).isPresent();
        pieces.add(new QuantityPiece("was/value", value, corrected));
        pieces.add(TextPiece.of(
                "was/reason",
                Slot.text(group, "changed because", "Why did it change?", "Such as: correction 2026-10."),
                corrected.and(changed)));
        pieces.add(TextPiece.of(
                "was/until",
                Slot.date(group, "used until", "Until when was it used?", "The last day the earlier value was used."),
                corrected.and(changed)));
    }

    private Piece aspect(String id, List<Aspect> aspects) {
        var first = aspects.get(0);
        boolean parts = id.equals(Aspect.Parts.ID);
        var words = new LinkedHashMap<String, Word>();
        aspects.forEach(a -> a.fold(
                choice -> {
                    choice.variants().forEach(v -> words.putIfAbsent(v.id(), new Word(v.id(), v.meaning())));
                    return words;
                },
                part -> {
                    part.words().forEach(w -> words.putIfAbsent(w, new Word(w, "")));
                    return words;
                }));
        words.put(
                ConditionText.NOT_REPORTED,
                new Word(ConditionText.NOT_REPORTED, "looked for in the source and not found"));
        var slot = Slot.suggested(
                "Definition",
                "definition: " + id.replace('-', ' '),
                "How is it defined: %s?".formatted(first.name()),
                parts
                        ? "Which parts the figure covers, with commas between them; not reported if the source does not say."
                        : "Which of these the source uses; not reported if it does not say. Only for metrics that have it.",
                List.copyOf(words.values()));
        return new AspectPiece(
                "definition/" + id,
                slot,
                a -> metric(a)
                        .flatMap(m -> m.definition().stream()
                                .filter(x -> x.id().equals(id))
                                .findFirst())
                        .map(Aspect::role));
    }

    private Weight weight(Answers soFar, Condition condition) {
        var use = metric(soFar).flatMap(m -> m.condition(condition.id()));
        boolean named = ConditionPiece.isNamed(condition, soFar.text(FURTHER));
        boolean said =
                soFar.text(source).filter(s -> known.states(s, condition.id())).isPresent();
        if (use.isEmpty() || said) {
            return named ? Weight.USEFUL : Weight.NONE;
        }
        var role = use.get().role();
        return role.asksForReport() ? Weight.DECIDES : role == Role.QUALIFIES && !named ? Weight.NONE : Weight.USEFUL;
    }

    Optional<Metric> metric(Answers answers) {
        return answers.text(metric).flatMap(scope::metric);
    }

    Slot source() {
        return source;
    }

    Slot device() {
        return device;
    }

    Slot metric() {
        return metric;
    }

    /** Whether it is a part of a reading from a figure. */
    boolean isReading(Piece piece) {
        return reading.contains(piece);
    }

    /** Whether it is a condition that none of the metrics on offer names. */
    boolean isFurther(Piece piece) {
        return piece instanceof ConditionPiece c && !scope.concerns(c.condition());
    }

    boolean isFurther(Slot slot) {
        return pieces.stream().anyMatch(p -> isFurther(p) && p.slots().contains(slot));
    }

    List<Piece> all() {
        return List.copyOf(pieces);
    }

    /** The conditions among the pieces, with the metric's word on each. */
    Map<Slot, Condition> conditions() {
        var found = new LinkedHashMap<Slot, Condition>();
        pieces.forEach(p -> {
            if (p instanceof ConditionPiece c) {
                found.put(c.slot(), c.condition());
            }
        });
        return found;
    }
}
