package comparand.study;

import comparand.model.library.ColumnQuantities;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** What a row would say if none of its cells were empty or marked missing, and what cannot be computed for lack of it. */
final class MissingCells {

    private final List<String> told;

    MissingCells(DataFile file) {
        // where several rows make one result, which of them are missing cannot be told from their columns
        this.told = file.columns().putsTogether()
                ? List.of()
                : ColumnQuantities.of(file.mapping()).keySet().stream().sorted().toList();
    }

    /**
     * One remark about a row that takes part.
     *
     * @param lacking the metrics that it gives no value
     */
    Optional<String> remark(RowFacts row, Collection<String> lacking) {
        if (lacking.isEmpty() && told.stream().allMatch(id -> isSaid(id, row))) {
            return Optional.empty();
        }
        var said = new ArrayList<String>();
        var missing = told.stream().filter(id -> !isSaid(id, row)).toList();
        if (!missing.isEmpty()) {
            said.add("nothing stands for " + quoted(missing));
        }
        if (!lacking.isEmpty()) {
            said.add("no value for " + quoted(lacking));
        }
        return said.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", said));
    }

    private static boolean isSaid(String id, RowFacts row) {
        return row.numbers().containsKey(id)
                || row.words().containsKey(id)
                || row.events().containsKey(id);
    }

    private static String quoted(Collection<String> ids) {
        return "`" + String.join("`, `", ids) + "`";
    }
}
