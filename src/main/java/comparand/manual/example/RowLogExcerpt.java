package comparand.manual.example;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What results say of a row that takes no part, or only in part. */
final class RowLogExcerpt {

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private RowLogExcerpt() {}

    static List<Said> of(Path place, String code) throws IOException {
        var results = MAPPER.readTree(Files.readString(Example.results(place)));
        return results.findParents("code").stream()
                .filter(n -> n.has("line") && n.path("code").asText().equals(code))
                .limit(1)
                .map(n -> said(n, code))
                .toList();
    }

    private static Said said(JsonNode note, String code) {
        var reason = note.path("reason").asText();
        var block = "line %s  %s  %s\n  %s"
                .formatted(
                        note.path("line").asText(), note.path("fate").asText().replace('-', ' '), code, reason);
        return new Said("ROW LOG", code, reason, "", "", block);
    }
}
