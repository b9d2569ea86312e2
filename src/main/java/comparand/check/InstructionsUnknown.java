package comparand.check;

import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.model.library.CharacteristicRecord;
import comparand.model.library.DeviceRecord;
import comparand.model.library.LabelRecord;
import comparand.model.library.SourceKind;
import comparand.model.library.SourcedRecord;
import java.util.Collection;
import java.util.stream.Stream;

/**
 * What it checks: a device whose instructions for use, or another document it cites, is not among the sources.
 *
 * <p>Why it matters: what the label states must have a place a reader can open.
 *
 * <p>What to write instead: the name of a file in sources/; for {@code instructions:} one of kind instructions-for-
 * use.
 */
final class InstructionsUnknown implements Rule {

    @Override
    public String code() {
        return "instructions-unknown";
    }

    @Override
    public void check(Context library, Findings findings) {
        var sources = library.library().sources();
        for (var device : library.library().devices().values()) {
            var instructions = device.instructions();
            var source = sources.get(instructions.value());
            if (source == null) {
                unknown(instructions, sources.keySet(), findings);
            } else if (source.kind().value() != SourceKind.INSTRUCTIONS_FOR_USE) {
                findings.stop(
                        instructions.span(),
                        "`%s` is not instructions for use".formatted(instructions.value()),
                        "label and nominal figures are taken from the instructions for use in force",
                        "name the source of kind instructions-for-use that belongs to the units at hand");
            }
            cited(device)
                    .filter(s -> !sources.containsKey(s.value()))
                    .forEach(s -> unknown(s, sources.keySet(), findings));
        }
    }

    private static Stream<Located<String>> cited(DeviceRecord device) {
        return Stream.of(
                        device.label().stream().map(LabelRecord::from),
                        device.parts().stream().flatMap(p -> p.from().stream()),
                        device.characteristics().stream().map(CharacteristicRecord::from))
                .flatMap(s -> s)
                .map(SourcedRecord::source);
    }

    private static void unknown(Located<String> source, Collection<String> known, Findings findings) {
        findings.stop(
                source.span(),
                "there is no source `%s`".formatted(source.value()),
                "what a record states of a device must have a place a reader can open",
                Suggest.instruction(source.value(), known));
    }
}
