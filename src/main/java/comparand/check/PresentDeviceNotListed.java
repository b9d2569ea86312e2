package comparand.check;

/**
 * What it checks: a dossier whose present device is not among its devices.
 *
 * <p>Why it matters: every other device is compared with it.
 *
 * <p>What to write instead: its name under {@code devices:} as well.
 */
final class PresentDeviceNotListed implements Rule {

    @Override
    public String code() {
        return "present-device-not-listed";
    }

    @Override
    public void check(Context library, Findings findings) {
        for (var dossier : library.dossiers()) {
            var present = dossier.presentDevice();
            if (dossier.devices().stream().noneMatch(d -> d.value().equals(present.value()))) {
                findings.stop(
                        present.span(),
                        "the present device `%s` is not among the devices of this dossier".formatted(present.value()),
                        "every other device is compared with it",
                        "add `- %s` under `devices:`".formatted(present.value()));
            }
        }
    }
}
