package comparand.demo;

/**
 * The three invented devices as the generator of the case data knows them. Pressure drop at a flow Q in L/min is {@code
 * linear · Q + square · Q²} mmHg, after the bench results; {@code factor} is the bench performance factor at 1.0 L/min, {@code
 * prime} in mL.
 */
enum CaseDataDevice {
    QUILLANE(0.50, 1.5, 28.0, 13.5, 0.71, 47, "33 14", "-33 11", "121 27"),
    MIRROWEN(0.38, 1.2, 41.4, 17.3, 0.64, 53, "36 16", "-35 12", "121 25"),
    SKARROW(0.62, 2.0, 21.9, 11.1, 0.75, 75, "27 12", "-31 13", "121 28");

    final double membraneArea;
    final double labelledFlow;
    final double prime;

    private final String freeHaemoglobin;
    private final String platelets;
    private final String bypass;
    private final double linear;
    private final double square;
    private final double factor;

    CaseDataDevice(
            double area,
            double labelledFlow,
            double linear,
            double square,
            double factor,
            double prime,
            String freeHaemoglobin,
            String platelets,
            String bypass) {
        this.membraneArea = area;
        this.labelledFlow = labelledFlow;
        this.linear = linear;
        this.square = square;
        this.factor = factor;
        this.prime = prime;
        this.freeHaemoglobin = freeHaemoglobin;
        this.platelets = platelets;
        this.bypass = bypass;
    }

    /** At the end of bypass, mg/dL, as the scenario prints it. */
    Target freeHaemoglobin() {
        return target(freeHaemoglobin);
    }

    /** Change of the platelet count, %, as the scenario prints it. */
    Target platelets() {
        return target(platelets);
    }

    /** Duration of bypass, min. */
    Target bypass() {
        return target(bypass);
    }

    private static Target target(String meanAndSd) {
        int blank = meanAndSd.indexOf(' ');
        return new Target(meanAndSd.substring(0, blank), meanAndSd.substring(blank + 1));
    }

    /** Pressure drop in mmHg; only the linear part follows viscosity. */
    double pressureDrop(double flow, double viscosityRatio) {
        return linear * viscosityRatio * flow + square * flow * flow;
    }

    /** Performance factor of the exchanger at a flow; it falls as blood passes faster. */
    double exchange(double flow) {
        return 1 - StrictMath.pow(1 - factor, StrictMath.pow(flow, -0.45));
    }
}
