package comparand.app;

import comparand.model.Audience;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A reader by name, or all of them, as written on the command line. */
final class Readers implements ITypeConverter<Set<Audience>> {

    static final Set<Audience> ALL = Set.of(Audience.values());

    @Override
    public Set<Audience> convert(String text) {
        if (text.equals("all")) {
            return ALL;
        }
        return Arrays.stream(Audience.values())
                .filter(a -> a.name().toLowerCase(Locale.ROOT).equals(text))
                .map(Set::of)
                .findFirst()
                .orElseThrow(() -> new TypeConversionException("`%s` is no reader; choose from %s, all"
                        .formatted(
                                text,
                                Arrays.stream(Audience.values())
                                        .map(a -> a.name().toLowerCase(Locale.ROOT))
                                        .collect(Collectors.joining(", ")))));
    }
}
