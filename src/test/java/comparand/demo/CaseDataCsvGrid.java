package comparand.demo;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A raw text file whose cells can be changed. */
final class CaseDataCsvGrid extends CaseDataGrid {

    private final Path path;
    private final String separator;
    private final Charset charset;
    private final List<List<String>> lines = new ArrayList<>();

    CaseDataCsvGrid(CaseDataHospital hospital, Path folder, String file) throws IOException {
        super(hospital, file, "");
        path = folder.resolve(file);
        boolean german = hospital == CaseDataHospital.LAKE_FERRAN;
        separator = german ? ";" : ",";
        charset = Charset.forName(german ? "windows-1252" : "UTF-8");
        for (var line : Files.readAllLines(path, charset)) {
            lines.add(new ArrayList<>(CaseDataTable.split(separator, line)));
        }
    }

    void save() throws IOException {
        var joined = lines.stream().map(l -> String.join(separator, l)).toList();
        Files.writeString(path, String.join("\n", joined) + "\n", charset);
    }

    @Override
    List<String> headings() {
        return List.copyOf(lines.get(0));
    }

    @Override
    int headingsLine() {
        return 1;
    }

    @Override
    int lastLine() {
        return lines.size();
    }

    @Override
    String get(int line, String heading) {
        return lines.get(line - 1).get(headings().indexOf(heading));
    }

    @Override
    void set(int line, String heading, String text) {
        lines.get(line - 1).set(headings().indexOf(heading), text);
    }

    @Override
    void rename(String heading, String by) {
        lines.get(0).set(headings().indexOf(heading), by);
    }

    @Override
    int repeat(int line) {
        lines.add(new ArrayList<>(lines.get(line - 1)));
        return lines.size();
    }
}
