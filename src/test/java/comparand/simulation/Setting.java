package comparand.simulation;

/**
 * The conditions under which a pressure drop comes about.
 *
 * @param flow of blood, L/min
 * @param haemoglobin g/dL; without effect in water
 * @param temperature °C
 * @param water whether water flows in place of blood
 * @param filter whether a filter lies between the pressure ports, beside oxygenator and exchanger
 */
record Setting(double flow, double haemoglobin, double temperature, boolean water, boolean filter) {

    static Setting blood(double flow, double haemoglobin, double temperature) {
        return new Setting(flow, haemoglobin, temperature, false, false);
    }

    Setting atFlow(double other) {
        return new Setting(other, haemoglobin, temperature, water, filter);
    }

    Setting atHaemoglobin(double other) {
        return new Setting(flow, other, temperature, water, filter);
    }

    Setting atTemperature(double other) {
        return new Setting(flow, haemoglobin, other, water, filter);
    }

    Setting inWater() {
        return new Setting(flow, 0, temperature, true, filter);
    }

    Setting acrossFilter() {
        return new Setting(flow, haemoglobin, temperature, water, true);
    }
}
