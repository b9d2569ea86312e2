package comparand.intake;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.diag.Suggest;
import comparand.document.form.FormList.Word;
import comparand.model.DataCell;
import comparand.model.FilledForm;
import java.util.List;
import java.util.Optional;

/** The answer in a cell: what was typed, in so far as the spreadsheet program left it as typed. */
final class CellText {

    private final List<Diagnostic> findings;

    CellText(List<Diagnostic> findings) {
        this.findings = findings;
    }

    /** The text of a cell for a slot; empty where nothing stands or a finding says why it cannot be taken. */
    Optional<String> of(FilledForm.Cell cell, Slot slot, Span at) {
        if (cell.computed()) {
            findings.add(Diagnostic.stop(
                    "cell-formula",
                    at,
                    "a formula stands in this cell",
                    "its result is not what a source prints, and changes with other cells",
                    "type what the source prints"));
            return Optional.empty();
        }
        return cell.content()
                .fold(
                        text -> Optional.of(text.text().strip()),
                        figure -> Optional.of(figure.text()),
                        when -> date(when, slot, at),
                        fault -> {
                            findings.add(Diagnostic.stop(
                                    "cell-error",
                                    at,
                                    "the error `%s` stands in this cell".formatted(fault.text()),
                                    "nothing can be read from it",
                                    "type what the source prints"));
                            return Optional.<String>empty();
                        },
                        blank -> Optional.<String>empty())
                .filter(t -> !t.isEmpty())
                .flatMap(t -> word(t, slot, at));
    }

    private Optional<String> date(DataCell.When when, Slot slot, Span at) {
        if (slot.kind() == Slot.Kind.DATE
                && when.day().isPresent()
                && when.time().isEmpty()) {
            return Optional.of(when.text());
        }
        findings.add(Diagnostic.stop(
                "cell-turned-into-date",
                at,
                "this cell holds the date %s".formatted(when.text()),
                "spreadsheet programs turn entries such as 1-2 or 3/4 into days; what was typed is lost",
                "set the cell to text and type it again, as the source prints it"));
        return Optional.empty();
    }

    /** Words of a fixed list only, in any case of letters. */
    private Optional<String> word(String text, Slot slot, Span at) {
        if (slot.kind() != Slot.Kind.WORD || slot.allows(text)) {
            return Optional.of(text);
        }
        var words = slot.words().stream().map(Word::word).toList();
        var same = words.stream().filter(text::equalsIgnoreCase).findFirst();
        if (same.isEmpty()) {
            findings.add(Diagnostic.stop(
                    "cell-not-in-list",
                    at,
                    "`%s` is not one of the words for `%s`".formatted(text, slot.heading()),
                    "only words of the list mean the same to everybody",
                    Suggest.instruction(text, words)));
        }
        return same;
    }
}
