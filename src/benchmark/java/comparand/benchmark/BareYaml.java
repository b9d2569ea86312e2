package comparand.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** Loads every YAML file of a folder with the library alone: the least that reading a library of records costs. */
final class BareYaml {

    private BareYaml() {}

    /** Argument: the folder. */
    public static void main(String[] args) throws IOException {
        var settings = LoadSettings.builder().setCodePointLimit(20_000_000).build();
        int files = 0;
        try (var all = Files.walk(Path.of(args[0]))) {
            for (var file : all.filter(p -> p.toString().endsWith(".yaml")).sorted().toList()) {
                if (new Load(settings).loadFromString(Files.readString(file)) == null) {
                    throw new IllegalStateException(file + " is empty");
                }
                files++;
            }
        }
        System.out.println(files + " files");
    }
}
