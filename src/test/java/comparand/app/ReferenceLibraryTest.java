package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import comparand.read.yaml.RecordSchema;
import comparand.support.LibraryCopy;
import comparand.support.PrintedFinding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The records that the manual takes example lines from, where neither the demo nor a new library has one, are read as they are. */
class ReferenceLibraryTest {

    private static final Path MORE = Path.of("src/main/resources/comparand/manual/library");

    @TempDir
    Path folder;

    @Test
    @DisplayName("beside a new library nothing is wrong with them but what they leave undecided")
    void read() throws IOException {
        var library = copied();
        var undecided = PrintedFinding.in(
                CommandLineUse.run("check", library.toString()).out());
        assertThat(undecided)
                .filteredOn(f -> f.severity().equals("STOP"))
                .hasSize(2)
                .allMatch(f -> f.code().equals("undecided"));

        var study = library.resolve("studies/reference-cases/study.yaml");
        Files.writeString(study, Files.readString(study).replaceAll("(?m)^ *undecided: .*\n", ""));
        // a PubMed identifier is refused in a library whose data are invented, and so are the others' here
        for (var dossier : new String[] {"example", "reference"}) {
            LibraryCopy.edit(
                    library.resolve("dossiers/" + dossier + ".yaml"), "invented-data: yes", "invented-data: no");
        }
        var run = CommandLineUse.run("check", library.toString());
        assertThat(run.out()).doesNotContain("STOP");
        assertThat(run.code()).isZero();
    }

    private Path copied() throws IOException {
        var library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        try (Stream<Path> files = Files.walk(MORE)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                var target = library.resolve(MORE.relativize(file).toString());
                Files.createDirectories(target.resolveSibling("."));
                Files.copy(file, target);
            }
        }
        return library;
    }

    @ParameterizedTest
    @ValueSource(strings = {"talk", "committee", "manuscript", "page"})
    @DisplayName("their templates are what templates may be")
    void templates(String kind) throws IOException {
        var schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(RecordSchema.all().getOrDefault(kind + ".schema.json", ""), InputFormat.JSON);
        var template = new YAMLMapper()
                .readTree(MORE.resolve("templates/" + kind + ".yaml").toFile());

        assertThat(schema.validate(template)).isEmpty();
    }
}
