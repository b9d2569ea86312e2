package comparand.metric;

import java.util.List;
import java.util.Map;

/**
 * Anaesthetic vapour in the sweep gas as a share of the concentration that keeps half of all patients of an age still
 * (minimum alveolar concentration): a condition of a case, never a metric of a device. {@code MAC = MAC40 ·
 * 10^(-0.00269 · (age - 40))} from 1 year on.
 */
final class Anaesthetic {

    private static final String AGENT = "anaesthetic";
    private static final Map<String, Double> AT_40 = Map.of("isoflurane", 1.17, "sevoflurane", 1.80, "desflurane", 6.6);
    private static final Citation MAPLESON =
            Citation.fromMemory("Mapleson, Br J Anaesth 1996;76:179-185", "MAC at 40 years and its fall with age");
    private static final Aspect ASPECT = new Aspect.Choice(
            AGENT,
            "anaesthetic vapour",
            "vapour",
            Role.DECIDES,
            "isoflurane",
            List.of(
                    new Variant("isoflurane", "1.17 % at 40 years"),
                    new Variant("sevoflurane", "1.80 % at 40 years; other tables give 2.0 to 2.1"),
                    new Variant("desflurane", "6.6 % at 40 years")),
            List.of());

    private Anaesthetic() {}

    static Metric concentration() {
        var card = Metric.named("minimum-alveolar-concentration", "minimum alveolar concentration at an age")
                .symbol("MAC")
                .meaning("Concentration of a vapour that keeps half of all patients of an age still, at one atmosphere")
                .unit("%")
                .plausible(0.8, 9)
                .possible(0.3, 15);
        AT_40.keySet().stream().sorted().forEach(agent -> card.derived(way(agent)));
        return card.aspect(ASPECT)
                .cites(MAPLESON)
                .worked(WorkedValue.of("2.2918 %", Citation.derived("1.80 × 10^0.10491"), "patient-age=1 a")
                        .under(AGENT, "sevoflurane"))
                .worked(WorkedValue.of("1.4532 %", Citation.derived("1.17 × 10^0.09415"), "patient-age=5 a"))
                .worked(WorkedValue.of("6.6 %", Citation.derived("at 40 years"), "patient-age=40 a")
                        .under(AGENT, "desflurane"))
                .build();
    }

    static Metric fraction() {
        return Metric.named("mac-fraction", "share of the minimum alveolar concentration")
                .symbol("MAC fraction")
                .meaning(
                        "Concentration of anaesthetic vapour in the sweep gas over the minimum alveolar concentration at the age")
                .unit("1")
                .plausible(0, 2)
                .possible(0, 6)
                .derived(Derivation.of(
                        "F_an / MAC",
                        Citation.derived("share of the concentration at the age"),
                        in -> in.of(Letters.VAPOUR_CONCENTRATION) / in.of(Letters.MAC),
                        Letters.VAPOUR_CONCENTRATION,
                        Letters.MAC))
                .aspect(ASPECT)
                .cites(MAPLESON)
                .worked(WorkedValue.of(
                        "0.6545",
                        Citation.derived("1.5 / 2.2918"),
                        "anaesthetic-concentration=1.5 %",
                        "minimum-alveolar-concentration=2.2918 %"))
                .build();
    }

    /** Under a year the formula does not hold, and gives no number. */
    private static Derivation way(String agent) {
        double at40 = AT_40.getOrDefault(agent, Double.NaN);
        return Derivation.of(
                        "MAC = %s · 10^(-0.00269 · (a - 40)), a ≥ 1".formatted(at40),
                        MAPLESON,
                        in -> in.of(Letters.AGE) < 1
                                ? Double.NaN
                                : at40 * Math.pow(10, -0.00269 * (in.of(Letters.AGE) - 40)),
                        Letters.AGE)
                .giving(AGENT, agent);
    }
}
