package comparand.metric;

import static java.util.Objects.requireNonNull;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A respect in which definitions of one metric differ in print. */
public sealed interface Aspect {

    /** The key under {@code definition:} in a record. */
    String id();

    /** In sentences. */
    String name();

    /** In the condition line. */
    String shortName();

    Role role();

    /** The words a record may use. */
    List<String> words();

    /** The variant local results follow unless a dossier asks for another; empty where it depends on the device. */
    Optional<String> standard();

    /** The words of a definition as printed, in the order of the aspect's own words: {@code oxygenator + filter}. */
    default String text(List<String> words) {
        return String.join(
                " + ",
                words.stream().sorted(Comparator.comparingInt(words()::indexOf)).toList());
    }

    <R> R fold(Function<Choice, R> choice, Function<Parts, R> parts);

    /** One of several formulas, constants or reference states. */
    record Choice(
            String id,
            String name,
            String shortName,
            Role role,
            String usual,
            List<Variant> variants,
            List<VariantConversion> conversions)
            implements Aspect {

        public Choice {
            requireNonNull(role, "role");
            variants = List.copyOf(variants);
            conversions = List.copyOf(conversions);
            if (variants.stream().noneMatch(v -> v.id().equals(usual))) {
                throw new IllegalArgumentException(id + ": `" + usual + "` is not one of its variants");
            }
        }

        @Override
        public List<String> words() {
            return variants.stream().map(Variant::id).toList();
        }

        @Override
        public Optional<String> standard() {
            return Optional.of(usual);
        }

        /** The named step from one variant to another, if there is one. */
        public Optional<VariantConversion> conversion(String from, String to) {
            return conversions.stream()
                    .filter(c -> c.from().equals(from) && c.to().equals(to))
                    .findFirst();
        }

        @Override
        public <R> R fold(Function<Choice, R> choice, Function<Parts, R> parts) {
            return choice.apply(this);
        }
    }

    /**
     * The parts of the device a value covers.
     *
     * @param additive whether the value of the whole is the sum over its parts, so that a device record that states what a
     *     part adds makes one footing possible (priming volume: yes; pressure drop at one flow: no)
     */
    record Parts(String name, Role role, List<String> words, boolean additive) implements Aspect {

        public static final String ID = "parts";

        public Parts {
            requireNonNull(role, "role");
            words = List.copyOf(words);
        }

        @Override
        public String id() {
            return ID;
        }

        @Override
        public String shortName() {
            return ID;
        }

        @Override
        public Optional<String> standard() {
            return Optional.empty();
        }

        @Override
        public <R> R fold(Function<Choice, R> choice, Function<Parts, R> parts) {
            return parts.apply(this);
        }
    }
}
