package comparand.check;

/**
 * What it checks: weights that do not say who set them.
 *
 * <p>Why it matters: weights decide which device comes first; nobody could ask why.
 *
 * <p>What to write instead: {@code set-by:} with a person or a body.
 */
final class WeightsWithoutName implements Rule {

    @Override
    public String code() {
        return "weights-without-name";
    }

    @Override
    public void check(Context context, Findings findings) {
        context.dossiers().stream()
                .flatMap(d -> d.weights().stream())
                .filter(w -> w.setBy().isEmpty())
                .forEach(w -> findings.stop(
                        w.on().span(),
                        "the weights do not say who set them",
                        "weights decide which device comes first, and somebody must answer for them",
                        "add `set-by:` with the body that decided on them, such as `set-by: Purchasing committee`"));
    }
}
