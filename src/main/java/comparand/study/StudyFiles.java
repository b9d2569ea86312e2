package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.model.Library;
import comparand.model.RowSource;
import comparand.model.library.ColumnQuantities;
import comparand.model.library.DataFileRecord;
import comparand.model.library.Describes;
import comparand.model.library.StudyRecord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Opens the files of a study: their columns, and what their rows will say once those of other files are joined to them. */
final class StudyFiles {

    private final Library library;
    private final StudyRecord study;
    private final Described described;
    private final List<Diagnostic> findings;

    StudyFiles(Library library, StudyRecord study, Described described, List<Diagnostic> findings) {
        this.library = library;
        this.study = study;
        this.described = described;
        this.findings = findings;
    }

    private record Opened(DataFileRecord mapping, String path, RowSource rows, ColumnPlan columns) {}

    /** In the order of the study; files with a fault are left out, and the fault is among the findings. */
    List<DataFile> open() {
        boolean elsewhere = study.files().stream()
                .flatMap(f -> f.describes().stream())
                .anyMatch(d -> d.value() != Describes.DEVICES);
        var opened = new ArrayList<Opened>();
        for (var mapping : study.files()) {
            var path = "studies/" + study.id() + "/" + mapping.name();
            var rows = library.data().get(path);
            if (rows == null) {
                throw new IllegalStateException("the reader let the missing file " + path + " through");
            }
            ColumnPlan.of(library, mapping, rows, elsewhere, findings)
                    .ifPresent(columns -> opened.add(new Opened(mapping, path, rows, columns)));
        }
        var headings = new LinkedHashMap<String, String>();
        for (var file : opened) {
            file.mapping.describes().ifPresent(level -> {
                var given = ColumnQuantities.of(file.mapping);
                described.file(level.value(), given.keySet());
                given.forEach((id, heading) -> headings.putIfAbsent(id, heading + " of " + file.mapping.name()));
            });
        }
        return opened.stream().map(o -> file(o, headings)).toList();
    }

    private DataFile file(Opened opened, Map<String, String> described) {
        var headings = new HashMap<>(described);
        headings.putAll(ColumnQuantities.of(opened.mapping));
        var fixed = FixedConditions.of(study, opened.mapping);
        var words = new HashSet<>(headings.keySet());
        opened.mapping.columns().stream()
                .flatMap(c -> c.value().condition().map(Located::value).stream())
                .forEach(words::add);
        return new DataFile(
                library,
                study,
                opened.mapping,
                opened.path,
                opened.rows,
                opened.columns,
                fixed,
                new GivenInputs(library, fixed, words),
                headings);
    }
}
