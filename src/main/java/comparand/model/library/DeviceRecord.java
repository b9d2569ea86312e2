package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.DecimalSign;
import java.util.List;
import java.util.Optional;

/** A device and what its label states. */
@Meaning("A device that is evaluated or compared, kept in devices/")
public record DeviceRecord(
        @Meaning("Name of the device: the file name without its ending")
        Located<String> device,

        @Meaning("As it is printed in reports") Located<String> name,

        @Meaning("As it is printed where room is short") @Key("short-name")
        Optional<Located<String>> shortName,

        @Meaning("Who makes it") Located<String> maker,

        @Meaning("What kind of device it is, such as oxygenator")
        Located<String> kind,

        @Meaning("The decimal sign of the numbers in this file; point unless declared")
        Optional<Located<DecimalSign>> decimal,

        @Meaning("The source that is the instructions for use of the units at hand")
        Located<String> instructions,

        @Meaning("Limits of use") List<LabelRecord> label,
        @Meaning("Parts, and what each adds") List<PartRecord> parts,
        @Meaning("Properties in words") List<CharacteristicRecord> characteristics,
        @Meaning("A remark for the reader of the library") Optional<Located<String>> remark) {

    public String id() {
        return device.value();
    }

    public String displayName() {
        return name.value();
    }

    public String briefName() {
        return shortName.orElse(name).value();
    }

    public Optional<LabelRecord> limit(String condition) {
        return label.stream().filter(l -> l.limits().value().equals(condition)).findFirst();
    }

    public Optional<PartRecord> part(String wanted) {
        return parts.stream().filter(p -> p.part().value().equals(wanted)).findFirst();
    }
}
