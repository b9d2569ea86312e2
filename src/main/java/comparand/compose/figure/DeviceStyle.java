package comparand.compose.figure;

import comparand.document.chart.Ink;
import comparand.document.chart.Trace;
import java.util.List;

/** How the lines of devices are told apart: by their dashes and by their names beside them; colour only repeats it. */
final class DeviceStyle {

    private static final List<Trace> TRACES = List.of(Trace.SOLID, Trace.DASHED, Trace.DASH_DOT);
    private static final List<Ink> INKS = List.of(Ink.TEAL, Ink.PLUM, Ink.OCHRE, Ink.INK, Ink.GREY);

    private DeviceStyle() {}

    /** Of the device that is named so-many-th in the dossier, counted from 0. */
    static Trace trace(int device) {
        return TRACES.get(device % TRACES.size());
    }

    static Ink ink(int device) {
        return INKS.get(device % INKS.size());
    }
}
