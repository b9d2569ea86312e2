package comparand.read;

import comparand.read.yaml.RecordSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the published JSON Schemas anew: run it when a record type has changed, and review what it writes. */
final class WriteSchemas {

    private WriteSchemas() {}

    public static void main(String[] args) throws IOException {
        for (var schema : RecordSchema.all().entrySet()) {
            Files.writeString(Path.of("templates/schema").resolve(schema.getKey()), schema.getValue());
        }
    }
}
