package comparand.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaFileObject;
import javax.tools.ToolProvider;

/**
 * A class of a chapter, compiled.
 *
 * @param name with its package
 * @param file its class file
 */
public record CompiledBlock(String name, Path file) {

    /** The content of its class file. */
    public byte[] bytes() throws IOException {
        return Files.readAllBytes(file);
    }

    /** Compiles a class against the class path of the tests; it must compile without a word. */
    public static CompiledBlock of(String file, String text, Path folder) throws IOException {
        var source = folder.resolve("source").resolve(file);
        Files.createDirectories(source.getParent());
        Files.writeString(source, text);
        var classes = Files.createDirectories(folder.resolve("classes"));
        var said = new DiagnosticCollector<JavaFileObject>();
        var compiler = ToolProvider.getSystemJavaCompiler();
        try (var files = compiler.getStandardFileManager(said, Locale.ROOT, StandardCharsets.UTF_8)) {
            var done = compiler.getTask(
                            null,
                            files,
                            said,
                            List.of(
                                    "-proc:none",
                                    "-classpath",
                                    System.getProperty("java.class.path"),
                                    "-d",
                                    classes.toString()),
                            null,
                            files.getJavaFileObjects(source))
                    .call();
            assertThat(done).as("%s: %s", file, said.getDiagnostics()).isTrue();
        }
        var name = file.replace(".java", "");
        return new CompiledBlock(name.replace('/', '.'), classes.resolve(name + ".class"));
    }

    /** The class of a block of a chapter. */
    public static CompiledBlock inChapter(String chapter, String file, Path folder) throws IOException {
        var block = ChaptersTest.blocks(chapter).stream()
                .filter(b -> b.info().equals("java " + file))
                .findFirst()
                .orElseThrow();
        return of(file, block.text(), folder);
    }
}
