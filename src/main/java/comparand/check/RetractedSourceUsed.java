package comparand.check;

import comparand.model.library.SourceState;

/**
 * What it checks: a dossier that asks for a retracted source by name.
 *
 * <p>Why it matters: retracted results must not feed a comparison.
 *
 * <p>What to write instead: the dossier without that source; it is listed under what was set aside.
 */
final class RetractedSourceUsed implements Rule {

    @Override
    public String code() {
        return "retracted-source-used";
    }

    @Override
    public void check(Context context, Findings findings) {
        for (var dossier : context.dossiers()) {
            dossier.sources()
                    .forEach(name -> context.library()
                            .source(name.value())
                            .filter(s -> s.status().state().value() == SourceState.RETRACTED)
                            .ifPresent(s -> findings.stop(
                                    name.span(),
                                    "`%s` is retracted%s"
                                            .formatted(
                                                    s.id(),
                                                    s.status()
                                                            .since()
                                                            .map(d -> " (" + d.value() + ")")
                                                            .orElse("")),
                                    "retracted results must not feed a comparison",
                                    "take the line out; the source stays listed under what was set aside")));
        }
    }
}
