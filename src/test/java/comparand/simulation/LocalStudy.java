package comparand.simulation;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What was measured at home.
 *
 * @param steps of flow, L/min; none in hospitals
 * @param hospitals how many; 0 on the bench
 * @param between SD between hospitals, as a share of that of cases within
 * @param repeated whether a unit or case has several rows at one step
 * @param againstPresent the true difference to the device in use today, if that was measured too
 * @param alikeUse whether every hospital used both devices about equally often
 */
record LocalStudy(
        List<Double> steps,
        int hospitals,
        double between,
        boolean repeated,
        OptionalDouble againstPresent,
        boolean alikeUse,
        List<LocalRow> rows) {

    LocalStudy {
        steps = List.copyOf(steps);
        rows = List.copyOf(rows);
    }

    boolean severalHospitals() {
        return hospitals > 1;
    }
}
