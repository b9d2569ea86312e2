package comparand.study.quality;

import java.util.Optional;

/**
 * Checks whether the device was changed during the case, which a library counts as the event `device-change-out`. It
 * matters because samples before and after the change belong to two devices, perhaps of two kinds. The row is kept and
 * pointed out. What to do: tell the samples of the second device apart.
 */
final class DeviceChanged implements QualityRule {

    @Override
    public String code() {
        return "device-changed";
    }

    @Override
    public String why() {
        return "samples before and after the change belong to two devices";
    }

    @Override
    public String fix() {
        return "give the samples after the change a device of their own, or list them under `dropped:` with a reason";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        return row.happened("device-change-out")
                ? Optional.of(QualityFinding.remark("the device was changed during the case of this row"))
                : Optional.empty();
    }
}
