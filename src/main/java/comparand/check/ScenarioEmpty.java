package comparand.check;

/**
 * What it checks: a scenario that supposes nothing other than the dossier.
 *
 * <p>Why it matters: it would report that no answer changes, and read like a proof of firmness.
 *
 * <p>What to write instead: what is left out, which tolerance holds, or how an unexplained spread is read.
 */
final class ScenarioEmpty implements Rule {

    @Override
    public String code() {
        return "scenario-empty";
    }

    @Override
    public void check(Context context, Findings findings) {
        context.dossiers().stream()
                .flatMap(d -> d.scenarios().stream())
                .filter(s -> s.leaveOut().isEmpty()
                        && s.leaveOutKinds().isEmpty()
                        && s.leaveOutFunding().isEmpty()
                        && s.leaveOutValues().isEmpty()
                        && s.tolerances().isEmpty()
                        && s.unstatedSpread().isEmpty())
                .forEach(s -> findings.stop(
                        s.suppose().span(),
                        "the scenario `%s` supposes nothing other than the dossier"
                                .formatted(s.suppose().value()),
                        "that no answer changes under it would say nothing",
                        "add what is left out, such as `leave-out-kinds: [abstract]`, or delete the scenario"));
    }
}
