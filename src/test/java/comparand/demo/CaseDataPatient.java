package comparand.demo;

/**
 * One invented case before its results: who was perfused, with what, and how fast.
 *
 * @param day days since the start of the study
 * @param weight kg
 * @param height cm
 * @param fullFlow the highest flow of the case, L/min
 * @param readingFlow the flow at which the pressures were read, L/min
 * @param lowest lowest blood temperature, °C
 * @param haematocritAfter at the end of bypass, fraction
 */
record CaseDataPatient(
        String id,
        CaseDataHospital hospital,
        CaseDataDevice device,
        int day,
        int ageMonths,
        double weight,
        int height,
        double fullFlow,
        double readingFlow,
        double lowest,
        double haematocritAfter) {

    /** Body surface, m² (Mosteller, N Engl J Med 1987;317:1098). */
    double surface() {
        return StrictMath.sqrt(height * weight / 3600);
    }
}
