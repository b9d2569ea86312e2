package comparand.check;

import comparand.metric.Better;
import comparand.model.library.DossierRecord;
import comparand.model.library.WeightRecord;

/**
 * What it checks: a weight on a metric of which neither more nor less is favourable.
 *
 * <p>Why it matters: it cannot be said which device it speaks for.
 *
 * <p>What to write instead: {@code better: more} or {@code better: less} at the question, or no weight.
 */
final class WeightWithoutDirection implements Rule {

    @Override
    public String code() {
        return "weight-without-direction";
    }

    @Override
    public void check(Context context, Findings findings) {
        for (var dossier : context.dossiers()) {
            dossier.weights().stream()
                    .flatMap(w -> w.of().stream())
                    .filter(w -> isWithout(context, dossier, w))
                    .forEach(w -> findings.stop(
                            w.metric().span(),
                            "neither more nor less of `%s` is favourable"
                                    .formatted(w.metric().value()),
                            "it cannot be said which device such a weight speaks for",
                            "add `better: more` or `better: less` at its question, or take the weight out"));
        }
    }

    private static boolean isWithout(Context context, DossierRecord dossier, WeightRecord weight) {
        var metric = context.catalogue().find(weight.metric().value());
        return dossier.questions().stream()
                .filter(q -> q.metric().value().equals(weight.metric().value()))
                .anyMatch(q -> q.better()
                        .map(b -> b.value() == Better.NEITHER)
                        .orElseGet(() ->
                                metric.filter(m -> m.better() == Better.NEITHER).isPresent()));
    }
}
