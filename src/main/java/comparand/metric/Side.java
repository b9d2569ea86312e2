package comparand.metric;

import java.util.Locale;

/** The two ends of the blood path: what arrives at the device (venous), and what leaves it (arterial). */
enum Side {
    INLET("in"),
    OUTLET("out");

    private final String suffix;

    Side(String suffix) {
        this.suffix = suffix;
    }

    /** As ids and sentences have it: {@code inlet}. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** As symbols have it: {@code in}. */
    String suffix() {
        return suffix;
    }

    private Input letter(String id, String symbol, String meaning, String unit) {
        return Input.of(word() + "-" + id, symbol + "_" + suffix, meaning + " at the " + word(), unit);
    }

    private Input analysed(String id, String symbol, String meaning, String unit) {
        var meant = "%s at the %s, of the sample at 37 °C".formatted(meaning, word());
        return Input.of(word() + "-" + id, symbol + "_" + suffix, meant, unit);
    }

    Input pressure() {
        return letter("pressure", "P", "blood pressure", "mmHg");
    }

    Input bloodTemperature() {
        return letter("blood-temperature", "T_b", "blood temperature", "°C");
    }

    Input waterTemperature() {
        return letter("water-temperature", "T_w", "water temperature", "°C");
    }

    Input saturation() {
        return letter("saturation", "S", "oxygen saturation of haemoglobin", "1");
    }

    /** As an analyser gives it: of the sample at 37 °C. */
    Input po2() {
        return analysed("po2", "PO₂", "oxygen pressure", "mmHg");
    }

    /** As an analyser gives it: of the sample at 37 °C. */
    Input pco2() {
        return analysed("pco2", "PCO₂", "carbon dioxide pressure", "mmHg");
    }

    /** As an analyser gives it: of the sample at 37 °C. */
    Input ph() {
        return analysed("ph", "pH", "pH", "[pH]");
    }

    Input oxygenContent() {
        return letter("oxygen-content", "C", "oxygen content", "mL/dL");
    }

    Input carbonDioxideContent() {
        return letter("carbon-dioxide-content", "C_CO₂", "carbon dioxide content", "mL/dL");
    }

    Input plasmaCarbonDioxideContent() {
        return letter("plasma-carbon-dioxide-content", "C_pl", "carbon dioxide content of plasma", "mL/dL");
    }
}
