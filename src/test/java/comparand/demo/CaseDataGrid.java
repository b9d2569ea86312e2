package comparand.demo;

import java.util.ArrayList;
import java.util.List;

/** The cells of a table in a raw file, to be changed in place. Lines are counted from 1, as an editor shows them. */
abstract class CaseDataGrid {

    /** The columns of a table of samples, in the order in which every hospital writes them. */
    enum Field {
        CASE,
        SAMPLE,
        MINUTE,
        PHASE,
        FLOW,
        SWEEP,
        OXYGEN_FRACTION,
        HAEMOGLOBIN,
        ARTERIAL_PO2,
        ARTERIAL_PCO2,
        ARTERIAL_PH,
        ARTERIAL_SATURATION,
        BASE_EXCESS,
        VENOUS_PO2,
        VENOUS_PCO2,
        VENOUS_PH,
        VENOUS_SATURATION,
        BLOOD_IN,
        BLOOD_OUT,
        WATER_IN,
        WATER_FLOW,
        PRESSURE_IN,
        PRESSURE_OUT,
        BAROMETER,
        REMARK
    }

    /** The one column that a hospital has to itself: a formula. */
    static final String RATIO = "Gas/blood";

    final CaseDataHospital hospital;
    final String file;
    final String sheet;

    CaseDataGrid(CaseDataHospital hospital, String file, String sheet) {
        this.hospital = hospital;
        this.file = file;
        this.sheet = sheet;
    }

    abstract List<String> headings();

    abstract int headingsLine();

    abstract int lastLine();

    abstract String get(int line, String heading);

    abstract void set(int line, String heading, String text);

    abstract void rename(String heading, String by);

    /** Writes a line once more at the end; returns the new line. */
    abstract int repeat(int line);

    final String heading(Field field) {
        var common = new ArrayList<>(headings());
        common.remove(RATIO);
        return common.get(List.of(Field.values()).indexOf(field));
    }

    final String get(int line, Field field) {
        return get(line, heading(field));
    }

    final double number(int line, Field field) {
        return Double.parseDouble(get(line, field).replace(',', '.'));
    }

    /** The line of a case in a table that has one row per case. */
    final int lineOf(String caseId) {
        for (int line = headingsLine() + 1; line <= lastLine(); line++) {
            if (get(line, headings().get(0)).equals(caseId)) {
                return line;
            }
        }
        throw new IllegalArgumentException("no " + caseId + " in " + file);
    }
}
