package comparand.model.library;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the columns of a file give: inputs, metrics and conditions by id, with the heading of the column. */
public final class ColumnQuantities {

    /** What counts in size classes give. */
    private static final List<String> BINS =
            List.of("bubble-bin-from", "bubble-bin-to", "bubble-bin-count-upstream", "bubble-bin-count-downstream");

    private ColumnQuantities() {}

    /** Ids, each with the heading of its column; also of quantities that only some rows of a column give. */
    public static Map<String, String> of(DataFileRecord mapping) {
        var given = new HashMap<String, String>();
        mapping.columns().stream().forEach(c -> {
            var heading = c.key().value();
            c.value().input().ifPresent(i -> given.put(i.value(), heading));
            c.value().metric().ifPresent(i -> given.put(i.value(), heading));
            c.value().condition().ifPresent(i -> given.put(i.value(), heading));
            c.value().at().stream().forEach(e -> given.put(e.value().value(), heading));
            c.value().measures().stream().forEach(m -> {
                m.value().input().ifPresent(i -> given.put(i.value(), heading));
                m.value().metric().ifPresent(i -> given.put(i.value(), heading));
                m.value().condition().ifPresent(i -> given.put(i.value(), heading));
                m.value().at().stream().forEach(e -> given.put(e.value().value(), heading));
            });
            if (c.value().holds().filter(h -> h.value() == ColumnRole.BIN_COUNT).isPresent()) {
                BINS.forEach(id -> given.put(id, heading));
            }
        });
        return given;
    }
}
