package comparand.demo;

import static comparand.demo.CaseDataGrid.Field.ARTERIAL_PCO2;
import static comparand.demo.CaseDataGrid.Field.ARTERIAL_PH;
import static comparand.demo.CaseDataGrid.Field.ARTERIAL_PO2;
import static comparand.demo.CaseDataGrid.Field.ARTERIAL_SATURATION;
import static comparand.demo.CaseDataGrid.Field.BASE_EXCESS;
import static comparand.demo.CaseDataGrid.Field.BLOOD_IN;
import static comparand.demo.CaseDataGrid.Field.BLOOD_OUT;
import static comparand.demo.CaseDataGrid.Field.CASE;
import static comparand.demo.CaseDataGrid.Field.FLOW;
import static comparand.demo.CaseDataGrid.Field.HAEMOGLOBIN;
import static comparand.demo.CaseDataGrid.Field.MINUTE;
import static comparand.demo.CaseDataGrid.Field.OXYGEN_FRACTION;
import static comparand.demo.CaseDataGrid.Field.PRESSURE_IN;
import static comparand.demo.CaseDataGrid.Field.PRESSURE_OUT;
import static comparand.demo.CaseDataGrid.Field.REMARK;
import static comparand.demo.CaseDataGrid.Field.VENOUS_PCO2;
import static comparand.demo.CaseDataGrid.Field.VENOUS_PH;
import static comparand.demo.CaseDataGrid.Field.VENOUS_PO2;
import static comparand.demo.CaseDataGrid.Field.VENOUS_SATURATION;
import static comparand.demo.CaseDataGrid.Field.WATER_IN;

import comparand.demo.CaseDataGrid.Field;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.Map;

/** What one row of samples looks like when something went wrong with it. */
final class CaseDataSpoiling {

    private final CaseDataGrid grid;
    private final int line;
    private final Map<Field, String> changes = new EnumMap<>(Field.class);

    private CaseDataSpoiling(CaseDataGrid grid, int line) {
        this.grid = grid;
        this.line = line;
    }

    /** The cells to change, with what to write; none where this cannot happen to this row. */
    static Map<Field, String> of(CaseDataMessKind kind, CaseDataGrid grid, int line) {
        var row = new CaseDataSpoiling(grid, line);
        row.spoil(kind);
        return row.changes;
    }

    private void spoil(CaseDataMessKind kind) {
        switch (kind) {
            case NO_VENOUS_SAMPLE -> missing(VENOUS_PO2, VENOUS_PCO2, VENOUS_PH, VENOUS_SATURATION);
            case NO_WATER_TEMPERATURE -> missing(WATER_IN);
            case FRACTION_AS_PER_CENT -> asPerCent();
            case SIDES_SWAPPED -> {
                swap(ARTERIAL_PO2, VENOUS_PO2);
                swap(ARTERIAL_PCO2, VENOUS_PCO2);
                swap(ARTERIAL_PH, VENOUS_PH);
                swap(ARTERIAL_SATURATION, VENOUS_SATURATION);
            }
            case PRESSURES_SWAPPED -> swap(PRESSURE_IN, PRESSURE_OUT);
            case AIR_IN_SAMPLE -> {
                scale(VENOUS_PO2, "1.9");
                scale(VENOUS_PCO2, "0.7");
            }
            case DECIMAL_SLIP -> scale(HAEMOGLOBIN, "10");
            case NO_FLOW -> scale(FLOW, "0");
            case TEMPERATURE_UNSETTLED -> unsettled();
            case ABOVE_RANGE -> changes.put(ARTERIAL_PO2, inWords(">500", ">66.7", ">500"));
            case FREE_TEXT -> changes.put(HAEMOGLOBIN, inWords("see note", "n.d.", "siehe Notiz"));
            case PAST_MIDNIGHT -> pastMidnight();
            case CODE_RETYPED -> retyped();
            case SIGN_LOST -> {
                if (grid.number(line, BASE_EXCESS) <= -2) {
                    scale(BASE_EXCESS, "-1");
                }
            }
            case SATURATION_CALCULATED -> changes.put(REMARK, "coox off");
            // the row itself stays as it is
            case ROW_TWICE -> changes.put(CASE, grid.get(line, CASE));
            default -> throw new IllegalArgumentException(kind + " does not happen to a sample");
        }
    }

    private String inWords(String atNorrisgate, String atStAldwyn, String atLakeFerran) {
        return switch (grid.hospital) {
            case NORRISGATE -> atNorrisgate;
            case ST_ALDWYN -> atStAldwyn;
            case LAKE_FERRAN -> atLakeFerran;
        };
    }

    private void missing(Field... fields) {
        for (var field : fields) {
            changes.put(field, inWords("n.d.", "-", ""));
        }
    }

    private void swap(Field one, Field other) {
        changes.put(one, grid.get(line, other));
        changes.put(other, grid.get(line, one));
    }

    /** Times a factor, with the decimals and the decimal sign as before. */
    private void scale(Field field, String factor) {
        var text = grid.get(line, field);
        var number = new BigDecimal(text.replace(',', '.'));
        write(field, number.multiply(new BigDecimal(factor)).setScale(number.scale(), RoundingMode.HALF_UP));
    }

    private void write(Field field, BigDecimal number) {
        var text = number.toPlainString();
        changes.put(field, grid.hospital == CaseDataHospital.LAKE_FERRAN ? text.replace('.', ',') : text);
    }

    /** Only one hospital writes fractions. */
    private void asPerCent() {
        if (grid.hospital == CaseDataHospital.ST_ALDWYN) {
            write(OXYGEN_FRACTION, new BigDecimal(grid.get(line, OXYGEN_FRACTION)).movePointRight(2));
        }
    }

    /** The probe still shows what passed before: blood that left warmer than the water, or colder. */
    private void unsettled() {
        double ahead = grid.number(line, WATER_IN) - grid.number(line, BLOOD_IN);
        if (Math.abs(ahead) >= 3) {
            var out = BigDecimal.valueOf(grid.number(line, WATER_IN) + 0.25 * ahead);
            write(BLOOD_OUT, out.setScale(1, RoundingMode.HALF_UP));
        }
    }

    /** The last sample of a case was taken after midnight, and a clock that starts anew gave its minute. */
    private void pastMidnight() {
        boolean last = line < grid.lastLine()
                && !grid.get(line + 1, CASE).equals(grid.get(line, CASE))
                && grid.get(line - 2, CASE).equals(grid.get(line, CASE));
        if (last) {
            changes.put(MINUTE, Integer.toString((int) grid.number(line, MINUTE) - 24 * 60));
        }
    }

    private void retyped() {
        var code = grid.get(line, CASE);
        if (code.contains("-0")) {
            changes.put(CASE, code.replace("-0", inWords("-", " 0", " 0")));
        }
    }
}
