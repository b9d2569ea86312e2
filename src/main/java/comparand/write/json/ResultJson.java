package comparand.write.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import comparand.document.result.LedgerResult;
import comparand.document.result.ResultSet;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;

/** Writes {@code results.json} and what changed between two of them: keys in kebab case in the order of the record types, absent entries left out. */
public final class ResultJson {

    private static final ObjectWriter WRITER = writer();

    private ResultJson() {}

    public static void write(ResultSet results, OutputStream out) throws IOException {
        WRITER.writeValue(out, results);
        out.write('\n');
    }

    /** What changed between two runs, in the same manner. */
    public static void write(LedgerResult ledger, OutputStream out) throws IOException {
        WRITER.writeValue(out, ledger);
        out.write('\n');
    }

    /** Whether a file is a result set of this tool, whichever version: it says so in its first key. */
    public static boolean isResultSet(InputStream in) throws IOException {
        try (var parser = new JsonFactory().createParser(in)) {
            return parser.nextToken() == JsonToken.START_OBJECT
                    && "format".equals(parser.nextFieldName())
                    && parser.nextToken() == JsonToken.VALUE_STRING
                    && parser.getText().startsWith(ResultSet.FORMATS);
        } catch (JsonParseException e) {
            return false;
        }
    }

    private static ObjectWriter writer() {
        var indent = new DefaultIndenter("  ", "\n");
        var printer = new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
        return JsonMapper.builder()
                .addModule(new Jdk8Module())
                .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
                .defaultPropertyInclusion(
                        JsonInclude.Value.construct(JsonInclude.Include.NON_ABSENT, JsonInclude.Include.NON_ABSENT))
                .build()
                .writer(printer)
                .without(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    }
}
