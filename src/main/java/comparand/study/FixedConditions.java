package comparand.study;

import comparand.diag.Located;
import comparand.model.library.ConditionText;
import comparand.model.library.DataFileRecord;
import comparand.model.library.Entries;
import comparand.model.library.StudyRecord;
import java.util.ArrayList;

/** The conditions that hold for every row of a file: its own over those of the study. */
final class FixedConditions {

    private FixedConditions() {}

    static Entries<Located<ConditionText>> of(StudyRecord study, DataFileRecord file) {
        var all = new ArrayList<>(file.conditions().list());
        study.conditions().stream()
                .filter(e -> !file.conditions().has(e.key().value()))
                .forEach(all::add);
        return new Entries<>(all);
    }
}
