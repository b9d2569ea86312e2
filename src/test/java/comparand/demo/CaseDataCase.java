package comparand.demo;

import java.util.OptionalInt;

/**
 * One invented case with its results, in one set of units whatever its hospital writes.
 *
 * @param pressureIn and pressureOut, mmHg, at {@code patient.readingFlow()}
 * @param plateletsBefore and plateletsAfter, 10⁹/L
 * @param haematocritBefore fraction
 * @param freeHaemoglobin at the end of bypass, mg/dL; empty where it was not measured
 * @param deviceNamed whether the row says which device it was
 */
record CaseDataCase(
        CaseDataPatient patient,
        int bypassMinutes,
        double pressureIn,
        double pressureOut,
        int plateletsBefore,
        int plateletsAfter,
        double haematocritBefore,
        OptionalInt freeHaemoglobin,
        double fibrinogenBefore,
        double fibrinogenAfter,
        boolean donorCells,
        boolean deviceNamed,
        boolean converted) {

    String id() {
        return patient.id();
    }

    double pressureDrop() {
        return pressureIn - pressureOut;
    }
}
