package comparand.simulation;

import java.util.Locale;

/** Writes the local study: the record that says what its columns mean, and the raw rows. */
record StudyFile(World world, LocalStudy study) {

    static final String DATA = "rows.csv";

    String record() {
        boolean clinical = world.clinical();
        return """
                study: local
                title: Our own results
                kind: %s
                unit-of-analysis: %s
                conditions:
                  test-model: %s
                files:
                  - file: %s
                    separator: comma
                    decimal: point
                    encoding: UTF-8
                    repeats: average
                %s    gives: [pressure-drop]
                    definition: {parts: [oxygenator, exchanger]}
                    columns:
                      member: {holds: %s}
                      reading: {holds: %s}
                %s      device: {holds: device, codes: {E: own, P: present}}
                      flow_lpm: {input: blood-flow, unit: L/min}
                      p_in_mmhg: {input: inlet-pressure, unit: mmHg}
                      p_out_mmhg: {input: outlet-pressure, unit: mmHg}
                      hb_gdl: {condition: haemoglobin, unit: g/dL}
                      t_c: {condition: temperature, unit: °C}
                """.formatted(
                        clinical ? "clinical" : "bench",
                        clinical ? "cases" : "units",
                        clinical ? "clinical" : "bench-blood-animal",
                        DATA,
                        clinical ? "" : "    grouped-by: [blood-flow]\n",
                        clinical ? "case" : "unit",
                        clinical ? "sample" : "run",
                        clinical ? "      hospital: {holds: centre}\n" : "");
    }

    String data() {
        boolean clinical = world.clinical();
        var text = new StringBuilder(clinical ? "member,reading,hospital," : "member,reading,")
                .append("device,flow_lpm,p_in_mmhg,p_out_mmhg,hb_gdl,t_c\n");
        for (var row : study.rows()) {
            double outlet = 180 + row.member().length();
            text.append(row.member()).append(',').append(row.reading()).append(',');
            if (clinical) {
                text.append(row.hospital()).append(',');
            }
            text.append(row.present() ? 'P' : 'E');
            text.append(String.format(
                    Locale.ROOT,
                    ",%.2f,%.1f,%.1f,%.1f,%.1f\n",
                    row.at().flow(),
                    outlet + row.drop(),
                    outlet,
                    row.at().haemoglobin(),
                    row.at().temperature()));
        }
        return text.toString();
    }
}
