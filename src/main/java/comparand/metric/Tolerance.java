package comparand.metric;

import comparand.unit.DecimalSign;
import comparand.unit.Parsed;
import comparand.unit.Printed;
import comparand.unit.QuantityText;
import comparand.unit.Unit;
import java.util.List;

/** How far two values of a condition may lie apart and still count as the same. */
public sealed interface Tolerance {

    Tolerance EQUAL = new Equal();

    /**
     * Whether two numbers, both in {@code unit}, count as the same. Numbers that differ by exactly the tolerance do; the
     * last bit of a double must not decide, so a billionth is allowed on top.
     */
    boolean same(double ours, double theirs, Unit unit);

    /** As printed in reports: {@code equal}, {@code ± 1 g/dL}, {@code ± 5 % of the value}. */
    String words();

    /** A fixed distance. */
    static Tolerance within(String amount) {
        return new Absolute(Printed.of(amount));
    }

    /** A share of the published value. */
    static Tolerance percent(String percent) {
        return new Relative(Printed.of(percent));
    }

    /**
     * Reads {@code equal}, {@code 1 g/dL} or {@code 5 % of the value}; a bare {@code 5 %} is taken as a share of the value
     * unless the condition itself is in per cent, where it could mean either and is refused.
     */
    static Parsed<Tolerance> read(String text, DecimalSign decimal, Condition condition) {
        var body = text.strip();
        if (body.equals("equal")) {
            return Parsed.ok(EQUAL);
        }
        if (condition.unit().isEmpty()) {
            return Parsed.fault(
                    0,
                    text.length(),
                    "`%s` is named in words, so its tolerance can only be `equal`".formatted(condition.id()),
                    "write `equal`");
        }
        var unit = condition.unit().get();
        boolean ofValue = body.endsWith("% of the value");
        var amount = ofValue ? body.substring(0, body.length() - " of the value".length()) : body;
        return QuantityText.quantity(amount, decimal).then(printed -> {
            // percentage points are the same unit, and a difference
            boolean percent =
                    List.of("%", "percent", "pct").contains(printed.unit().spelling());
            if (printed.number().value().signum() < 0) {
                return Parsed.fault(
                        0,
                        text.length(),
                        "a tolerance is not negative, got `" + body + "`",
                        "write the distance allowed, such as `1 g/dL`");
            }
            if (ofValue && !percent) {
                return Parsed.fault(
                        0,
                        text.length(),
                        "`%s` is no share of a value".formatted(amount),
                        "write per cent, such as `5 % of the value`");
            }
            if (ofValue || (percent && !printed.unit().convertsTo(unit))) {
                return Parsed.ok(new Relative(printed));
            }
            if (percent) {
                return Parsed.fault(
                        0,
                        text.length(),
                        "`%s` may mean per cent of the value or percentage points".formatted(body),
                        "write `%s %% of the value` or `%s percentage points`"
                                .formatted(printed.number(), printed.number()));
            }
            if (printed.unit().isNumber() && unit.code().equals("%")) {
                return Parsed.fault(
                        0,
                        text.length(),
                        "`%s` may be a fraction or percentage points".formatted(body),
                        "write `%s percentage points` or `%s %% of the value`"
                                .formatted(printed.number(), printed.number()));
            }
            return printed.unit().convertsTo(unit)
                    ? Parsed.ok(new Absolute(printed))
                    : Parsed.fault(
                            0,
                            text.length(),
                            "`%s` is not a distance on `%s`, which is kept in %s".formatted(body, condition.id(), unit),
                            "write it in %s".formatted(unit));
        });
    }

    /** No distance at all. */
    record Equal() implements Tolerance {
        @Override
        public boolean same(double ours, double theirs, Unit unit) {
            return Math.abs(ours - theirs) <= slack(theirs);
        }

        @Override
        public String words() {
            return "equal";
        }
    }

    /** A fixed distance, written as a difference. */
    record Absolute(Printed amount) implements Tolerance {
        @Override
        public boolean same(double ours, double theirs, Unit unit) {
            double allowed = amount.asDifferenceIn(unit);
            return Math.abs(ours - theirs) <= allowed + slack(allowed);
        }

        @Override
        public String words() {
            return "± " + amount;
        }
    }

    /** A share of the published value, in per cent. */
    record Relative(Printed percent) implements Tolerance {
        @Override
        public boolean same(double ours, double theirs, Unit unit) {
            double allowed = percent.in(Unit.ONE) * Math.abs(theirs);
            return Math.abs(ours - theirs) <= allowed + slack(allowed);
        }

        @Override
        public String words() {
            return "± " + percent.number() + " % of the value";
        }
    }

    private static double slack(double size) {
        return 1e-9 * Math.max(1e-3, Math.abs(size));
    }
}
