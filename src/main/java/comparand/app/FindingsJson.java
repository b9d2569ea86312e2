package comparand.app;

import com.fasterxml.jackson.databind.json.JsonMapper;
import comparand.diag.Diagnostic;
import java.util.List;

/** Findings for machines: one JSON object with a list, in the order in which people see them. */
final class FindingsJson {

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private FindingsJson() {}

    static String of(List<Diagnostic> findings) {
        var root = MAPPER.createObjectNode();
        var list = root.putArray("findings");
        for (var f : findings.stream().sorted(Diagnostic.ORDER).toList()) {
            var finding = list.addObject()
                    .put("severity", f.severity().name())
                    .put("code", f.code())
                    .put("file", f.span().file());
            if (f.span().isCell()) {
                finding.put("sheet", f.span().sheet()).put("cell", f.span().cellName());
            }
            finding.put("line", f.span().line())
                    .put("column", f.span().column())
                    .put("length", f.span().length())
                    .put("message", f.message())
                    .put("why", f.why())
                    .put("fix", f.fix());
        }
        root.put("stopped", findings.stream().anyMatch(Diagnostic::stops));
        return root.toPrettyString();
    }
}
