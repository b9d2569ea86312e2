package comparand.app;

import comparand.model.Audience;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Readers as written on the command line: one by name, or all of them. */
record Readers(Set<Audience> audiences) {

    static final Readers ALL = new Readers(Set.of(Audience.values()));

    Readers {
        audiences = Set.copyOf(audiences);
    }

    /** All that are named in a list. */
    static Set<Audience> together(List<Readers> named) {
        return named.stream().flatMap(r -> r.audiences.stream()).collect(Collectors.toUnmodifiableSet());
    }

    /** From a word of the command line. */
    static final class Named implements ITypeConverter<Readers> {
        @Override
        public Readers convert(String text) {
            return text.equals("all")
                    ? ALL
                    : Arrays.stream(Audience.values())
                            .filter(a -> name(a).equals(text))
                            .map(a -> new Readers(Set.of(a)))
                            .findFirst()
                            .orElseThrow(() -> new TypeConversionException(
                                    "`%s` is no reader; choose from %s, all".formatted(text, names())));
        }

        private static String names() {
            return Arrays.stream(Audience.values()).map(Named::name).collect(Collectors.joining(", "));
        }

        private static String name(Audience audience) {
            return audience.name().toLowerCase(Locale.ROOT);
        }
    }
}
