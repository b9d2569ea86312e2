package comparand.unit;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The rows of the UCUM tables, version 2.2 (17 June 2024), that this field needs: base units, prefixes, atoms and the
 * three special units. A test holds every row against the published table.
 */
final class UcumTable {

    /** One atom: {@code code = value × expression}; only a metric atom takes prefixes. */
    record Atom(String value, String expression, boolean metric) {}

    static final Set<String> BASE = Set.of("m", "s", "g", "rad", "K", "C", "cd");
    static final Map<String, BigFraction> PREFIXES = prefixes();
    static final Map<String, Atom> ATOMS = atoms();

    /** Units whose zero is not the zero of the base unit, or whose scale is a logarithm. */
    static final Map<String, Unit> SPECIAL = Map.of(
            "Cel", new Unit("Cel", "°C", Dimension.base("K"), new Scale.Offset(fraction("273.15"), BigFraction.ONE)),
            "[degF]",
                    new Unit(
                            "[degF]",
                            "°F",
                            Dimension.base("K"),
                            new Scale.Offset(fraction("459.67"), BigFraction.of(5, 9))),
            "[pH]",
                    new Unit(
                            "[pH]",
                            "pH",
                            Dimension.base("m").power(-3),
                            new Scale.NegativeLog10(fraction("6.02214076e26"))));

    private UcumTable() {}

    /** Special units take no prefixes here: a millidegree is of no use to anyone. */
    static boolean isMetric(String code) {
        var row = ATOMS.get(code);
        return BASE.contains(code) || (row != null && row.metric());
    }

    static BigFraction fraction(String decimal) {
        var d = new BigDecimal(decimal);
        return d.scale() >= 0
                ? BigFraction.of(d.unscaledValue(), BigInteger.TEN.pow(d.scale()))
                : BigFraction.of(d.toBigIntegerExact());
    }

    private static Map<String, BigFraction> prefixes() {
        var p = new LinkedHashMap<String, BigFraction>();
        // two-letter prefixes first, so that "dag" is a decagram and not a deci-"ag"
        for (var row : List.of(
                "da:1e1", "Y:1e24", "Z:1e21", "E:1e18", "P:1e15", "T:1e12", "G:1e9", "M:1e6", "k:1e3", "h:1e2",
                "d:1e-1", "c:1e-2", "m:1e-3", "u:1e-6", "n:1e-9", "p:1e-12", "f:1e-15", "a:1e-18", "z:1e-21",
                "y:1e-24")) {
            var cut = row.indexOf(':');
            p.put(row.substring(0, cut), fraction(row.substring(cut + 1)));
        }
        return Collections.unmodifiableMap(p);
    }

    private static Map<String, Atom> atoms() {
        var a = new LinkedHashMap<String, Atom>();
        // numbers
        plain(a, "10*", "10", "1");
        plain(a, "10^", "10", "1");
        plain(a, "%", "1", "10*-2");
        plain(a, "[ppth]", "1", "10*-3");
        plain(a, "[ppm]", "1", "10*-6");
        plain(a, "[ppb]", "1", "10*-9");
        metric(a, "mol", "6.02214076", "10*23");
        metric(a, "eq", "1", "mol");
        metric(a, "osm", "1", "mol");
        metric(a, "[iU]", "1", "1");
        // mechanics
        metric(a, "Hz", "1", "s-1");
        metric(a, "N", "1", "kg.m/s2");
        metric(a, "Pa", "1", "N/m2");
        metric(a, "J", "1", "N.m");
        metric(a, "W", "1", "J/s");
        metric(a, "bar", "1e5", "Pa");
        plain(a, "atm", "101325", "Pa");
        metric(a, "dyn", "1", "g.cm/s2");
        metric(a, "erg", "1", "dyn.cm");
        metric(a, "P", "1", "dyn.s/cm2");
        metric(a, "St", "1", "cm2/s");
        metric(a, "m[H2O]", "980665e-5", "kPa");
        metric(a, "m[Hg]", "133.3220", "kPa");
        plain(a, "[lbf_av]", "1", "[lb_av].[g]");
        metric(a, "[g]", "980665e-5", "m/s2");
        plain(a, "[psi]", "1", "[lbf_av]/[in_i]2");
        plain(a, "[PRU]", "1", "mm[Hg].s/ml");
        plain(a, "[wood'U]", "1", "mm[Hg].min/L");
        metric(a, "cal_th", "4.184", "J");
        metric(a, "cal", "1", "cal_th");
        // space, time, mass
        metric(a, "l", "1", "dm3");
        metric(a, "L", "1", "l");
        plain(a, "[in_i]", "254e-2", "cm");
        plain(a, "[ft_i]", "12", "[in_i]");
        plain(a, "[Ch]", "1", "mm/3");
        plain(a, "[drp]", "1", "ml/20");
        plain(a, "min", "60", "s");
        plain(a, "h", "60", "min");
        plain(a, "d", "24", "h");
        plain(a, "wk", "7", "d");
        plain(a, "a_j", "365.25", "d");
        plain(a, "a", "1", "a_j");
        plain(a, "mo_j", "1", "a_j/12");
        plain(a, "mo", "1", "mo_j");
        metric(a, "t", "1e3", "kg");
        plain(a, "[gr]", "64.79891", "mg");
        plain(a, "[lb_av]", "7000", "[gr]");
        // chemistry
        metric(a, "kat", "1", "mol/s");
        metric(a, "U", "1", "umol/min");
        metric(a, "g%", "1", "g/dl");
        return Collections.unmodifiableMap(a);
    }

    private static void plain(Map<String, Atom> table, String code, String value, String expression) {
        table.put(code, new Atom(value, expression, false));
    }

    private static void metric(Map<String, Atom> table, String code, String value, String expression) {
        table.put(code, new Atom(value, expression, true));
    }
}
