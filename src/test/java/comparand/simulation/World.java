package comparand.simulation;

import comparand.calibration.Draw;

/**
 * What is true of one device, at home and elsewhere: how its pressure drop follows the conditions, and how units or cases
 * scatter around that.
 *
 * @param clinical whether cases in hospitals are looked at, or units on the bench
 * @param usual the conditions at home; on the bench the flow is set in steps
 * @param flowSd by how much the flow differs from case to case, L/min; 0 on the bench
 * @param haemoglobinSd the same of haemoglobin, g/dL
 * @param memberSd of units or cases under the same conditions, mmHg
 * @param rowSd of one reading of the same unit or case, mmHg
 * @param margin the smallest difference that matters, mmHg
 */
record World(
        PressureLaw law,
        boolean clinical,
        Setting usual,
        double flowSd,
        double haemoglobinSd,
        double memberSd,
        double rowSd,
        double margin) {

    private static final double[] MARGINS = {6, 9, 12};
    private static final double TEMPERATURE_SD = 0.2;

    static World draw(Draw draw) {
        var law = new PressureLaw(draw.uniform(8, 14), draw.uniform(1.5, 3), draw.uniform(2, 5));
        boolean clinical = draw.whole(0, 1) == 1;
        return new World(
                law,
                clinical,
                clinical ? Setting.blood(5, 9, 36) : Setting.blood(5, 12, 37),
                clinical ? draw.uniform(0.1, 0.3) : 0,
                clinical ? draw.uniform(0.4, 0.9) : 0.25,
                draw.uniform(2, 5),
                clinical ? draw.uniform(1.5, 4) : draw.uniform(0.5, 2),
                MARGINS[draw.whole(0, MARGINS.length - 1)]);
    }

    /** The conditions one unit or case came to, around those of all. */
    Setting someone(Draw draw, Setting around) {
        var theirs = around.atFlow(draw.normal(around.flow(), flowSd))
                .atTemperature(draw.normal(around.temperature(), TEMPERATURE_SD));
        return around.water() ? theirs : theirs.atHaemoglobin(draw.normal(around.haemoglobin(), haemoglobinSd));
    }

    /** SD of cases within one hospital: of their own, of one reading, and from the flow and haemoglobin they came to; mmHg. */
    double within() {
        double flow = slope(usual.atFlow(usual.flow() + 0.1), 0.1) * flowSd;
        double red = slope(usual.atHaemoglobin(usual.haemoglobin() + 0.1), 0.1) * haemoglobinSd;
        return Math.sqrt(memberSd * memberSd + rowSd * rowSd + flow * flow + red * red);
    }

    private double slope(Setting further, double by) {
        return (law.drop(further) - law.drop(usual)) / by;
    }

    /** A true difference: none in half of all, else half the margin, just the margin, or twice it, either way. */
    double difference(Draw draw) {
        double share = draw.uniform(0, 1);
        double times = share < 0.5 ? 0 : share < 0.65 ? 0.5 : share < 0.85 ? 1 : 2;
        return times == 0 ? 0 : (draw.whole(0, 1) == 0 ? 1 : -1) * times * margin;
    }
}
