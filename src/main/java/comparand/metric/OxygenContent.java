package comparand.metric;

import comparand.unit.Printed;
import java.util.List;
import java.util.Map;

/**
 * Oxygen carried by blood on one side of the device, bound and dissolved: {@code C = k · Hb · S + α · P}.
 *
 * <p>k is Hüfner's constant (mL/g), α the solubility (mL/dL/mmHg). Both are met with several values in print, so both
 * belong to the definition of every value computed from them.
 */
final class OxygenContent {

    static final Aspect HUFNER = new Aspect.Choice(
            "hufner-constant",
            "Hüfner's constant, mL/g",
            "k",
            Role.QUALIFIES,
            "1.34",
            List.of(
                    new Variant("1.34", "usual in clinical work"),
                    new Variant("1.36", "usual in physiology"),
                    new Variant("1.39", "theoretical, 4 × 22 391 mL / 64 458 g")),
            List.of());
    static final Aspect SOLUBILITY = new Aspect.Choice(
            "oxygen-solubility",
            "solubility of oxygen, mL/dL/mmHg",
            "α",
            Role.QUALIFIES,
            "0.0031",
            List.of(
                    new Variant("0.0031", "0.023 mL/dL/kPa"),
                    new Variant("0.003", "0.0225 mL/dL/kPa"),
                    new Variant("0", "dissolved oxygen left out")),
            List.of());
    private static final Citation PAGE =
            Citation.read("anaesthesiauk.com 2005, oxygen content", "example: 20.1 + 0.3 = 20.4 mL/dL");

    private OxygenContent() {}

    static Metric inlet() {
        return side("inlet", "in");
    }

    static Metric outlet() {
        return side("outlet", "out");
    }

    private static Metric side(String side, String suffix) {
        var saturation = side + "-saturation";
        var pressure = side + "-po2";
        return Metric.named(side + "-oxygen-content", "oxygen content at the " + side)
                .symbol("C " + suffix)
                .meaning("Oxygen bound to haemoglobin and dissolved in the blood at the " + side + ", as gas at STPD")
                .unit("mL/dL")
                .plausible(4, 24)
                .possible(0, 35)
                .derived(new Derivation(
                        "C = k · Hb · S + α · P",
                        List.of(
                                Input.of("haemoglobin", "Hb", "total haemoglobin", "g/dL"),
                                Input.of(saturation, "S", "oxygen saturation at the " + side, "1"),
                                Input.of(pressure, "P", "oxygen pressure at the " + side, "mmHg")),
                        Definition.NONE,
                        Citation.commonPractice("bound plus dissolved oxygen"),
                        in -> in.constant("hufner-constant") * in.get("haemoglobin") * in.get(saturation)
                                + in.constant("oxygen-solubility") * in.get(pressure)))
                .aspect(HUFNER)
                .aspect(SOLUBILITY)
                .cites(Citation.read(
                        "Dijkhuizen et al., Pflügers Arch 1977;369:223-231", "measured 1.368 (SD 0.017) mL/g"))
                .cites(PAGE)
                .worked(new WorkedValue(
                        Map.of("haemoglobin", "15 g/dL", saturation, "100 %", pressure, "13.3 kPa"),
                        Definition.NONE,
                        Printed.of("20.4 mL/dL"),
                        PAGE))
                .worked(new WorkedValue(
                        Map.of("haemoglobin", "10 g/dL", saturation, "0.995", pressure, "180 mmHg"),
                        Definition.NONE.with("hufner-constant", List.of("1.36")),
                        Printed.of("14.090 mL/dL"),
                        Citation.derived("1.36 × 10 × 0.995 + 0.0031 × 180")))
                .build();
    }
}
