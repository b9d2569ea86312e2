package comparand.check;

import comparand.diag.Located;
import java.time.LocalDate;

/**
 * What it checks: a date after the day the report speaks of.
 *
 * <p>Why it matters: nothing was read, issued or checked on a day that has not come.
 *
 * <p>What to write instead: the day it really happened.
 */
final class DateInFuture implements Rule {

    @Override
    public String code() {
        return "date-in-future";
    }

    @Override
    public void check(Context context, Findings findings) {
        var today = context.today();
        for (var source : context.library().sources().values()) {
            after(source.status().checked(), today, findings);
            source.status().since().ifPresent(d -> after(d, d.value().earliest(), today, findings));
            source.document().ifPresent(d -> after(d.date(), d.date().value().earliest(), today, findings));
            source.reference().issued().ifPresent(d -> after(d, d.value().earliest(), today, findings));
            for (var value : source.values()) {
                value.read().forEach(r -> after(r.on(), today, findings));
                value.letter().ifPresent(l -> after(l.on(), today, findings));
                value.settled().ifPresent(s -> after(s.on(), today, findings));
                value.was().ifPresent(w -> after(w.until(), today, findings));
            }
        }
        context.library().screenings().values().stream()
                .flatMap(log -> log.searches().stream())
                .forEach(search -> after(search.on(), today, findings));
        for (var dossier : context.dossiers()) {
            after(dossier.asOf(), today, findings);
            after(dossier.fixed(), dossier.asOf().value(), findings);
            dossier.firstSeen().ifPresent(d -> after(d, dossier.asOf().value(), findings));
            dossier.tolerances().forEach(t -> after(t.set(), dossier.asOf().value(), findings));
            dossier.since().ifPresent(d -> after(d, dossier.asOf().value(), findings));
            dossier.costs().forEach(c -> after(c.on(), dossier.asOf().value(), findings));
            dossier.weights().ifPresent(w -> after(w.on(), dossier.asOf().value(), findings));
        }
    }

    private static void after(Located<LocalDate> date, LocalDate today, Findings findings) {
        after(date, date.value(), today, findings);
    }

    private static void after(Located<?> written, LocalDate date, LocalDate today, Findings findings) {
        if (date.isAfter(today)) {
            findings.stop(
                    written.span(),
                    "%s lies after %s, the day this report speaks of".formatted(written.value(), today),
                    "a date that has not come is a slip, or the report is older than its sources",
                    "write the day it happened, or move `as-of:` of the dossier");
        }
    }
}
