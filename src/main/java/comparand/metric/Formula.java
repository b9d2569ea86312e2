package comparand.metric;

import static java.util.Objects.requireNonNull;

import comparand.unit.Dimension;
import comparand.unit.Parsed;
import comparand.unit.Unit;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A formula as the author of a library writes it: arithmetic over letters, {@code (Plt_post - Plt_pre) / Plt_pre}. It has
 * {@code + - * / ^}, brackets, numbers, and the functions {@link FormulaParser#FUNCTIONS}; no loops, no calls of anything
 * else, and a size that bounds the time it takes.
 */
public final class Formula {

    private final String text;
    private final FormulaNode root;

    Formula(String text, FormulaNode root) {
        this.text = requireNonNull(text, "text");
        this.root = requireNonNull(root, "root");
    }

    /**
     * Reads a formula. Positions in faults count within the text.
     *
     * @param letters what may stand for a number in it
     */
    public static Parsed<Formula> read(String text, Set<String> letters) {
        return FormulaParser.read(text, letters);
    }

    /** Whether a word can stand for a number in a formula. */
    public static boolean isLetter(String word) {
        return FormulaParser.isLetter(word);
    }

    /** The letters that stand in it. */
    public Set<String> letters() {
        var found = new TreeSet<String>();
        root.letters(found);
        return found;
    }

    /** Its value from bare numbers, as they stand; not a number where the arithmetic gives none. */
    public double value(Map<String, Double> numbers) {
        return root.value(numbers);
    }

    /** The dimension of the result; a fault where it adds unlike quantities or takes a logarithm of a length. */
    public Parsed<Dimension> dimension(Map<String, Unit> units) {
        try {
            return Parsed.ok(root.dimension(units));
        } catch (FormulaNode.Unlike unlike) {
            return Parsed.fault(unlike.at(), unlike.length(), unlike.problem(), unlike.fix());
        } catch (ArithmeticException tooLarge) {
            return Parsed.fault(0, text.length(), "an exponent is beyond any use", "check the exponents");
        }
    }

    /**
     * Its value as a quantity: every number is brought to base units, so that L/min times mL/dL needs no factor, and the
     * result to the unit wanted.
     *
     * @throws IllegalArgumentException if the result has another dimension: {@link #dimension} was not asked
     */
    public double quantity(Map<String, Double> numbers, Map<String, Unit> units, Unit wanted) {
        var base = new TreeMap<String, Double>();
        for (var letter : letters()) {
            var unit = requireNonNull(units.get(letter), letter);
            base.put(letter, unit.convert(requireNonNull(numbers.get(letter), letter), base(unit.dimension())));
        }
        return base(wanted.dimension()).convert(value(base), wanted);
    }

    private static Unit base(Dimension dimension) {
        return Unit.of(dimension.toString());
    }

    /** As written. */
    @Override
    public String toString() {
        return text;
    }
}
