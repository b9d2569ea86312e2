package comparand.check;

import comparand.diag.Suggest;

/**
 * What it checks: a value of a device that has no record.
 *
 * <p>Why it matters: its label, parts and instructions for use are not known, so it cannot be set beside anything.
 *
 * <p>What to write instead: the name of a file in devices/, without its ending.
 */
final class DeviceUnknown implements Rule {

    @Override
    public String code() {
        return "device-unknown";
    }

    @Override
    public void check(Context library, Findings findings) {
        var devices = library.library().devices().keySet();
        library.values()
                .map(v -> v.value().device())
                .filter(d -> !devices.contains(d.value()))
                .forEach(d -> findings.stop(
                        d.span(),
                        "there is no device `%s`".formatted(d.value()),
                        "without its record, label and parts of the device are unknown",
                        Suggest.instruction(d.value(), devices)));
    }
}
