package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page is built, and shown where there is a screen. */
class ShowCommandTest {

    private static final String DEMO = "evidence/dossiers/small-oxygenators.yaml";

    @TempDir
    Path folder;

    @Test
    @DisplayName("the path of the page is the last word, and the page lies there with the results it is drawn from")
    void path() throws IOException {
        var run = CommandLineUse.run("show", DEMO, "--print", "--out", folder.toString());

        var page = folder.resolve("small-oxygenators-page/page.html");
        assertThat(run.code()).isZero();
        assertThat(run.out().strip()).isEqualTo(page.toString());
        assertThat(page).isNotEmptyFile();
        // so that it can be sent by mail, and opens at once from a stick
        assertThat(Files.size(page)).isLessThan(1_572_864);
        assertThat(page.resolveSibling("results.json")).isNotEmptyFile();
    }

    @Test
    @DisplayName("a dossier that is not there is a finding, and nothing is written")
    void missing() {
        var run = CommandLineUse.run("show", "evidence/dossiers/none.yaml", "--print", "--out", folder.toString());

        assertThat(run.code()).isEqualTo(Exit.STOPPED);
        assertThat(run.err()).contains("evidence/dossiers/none.yaml");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    @DisplayName("the browser that a person names goes before what the system has; without a screen nothing is opened")
    void viewer() throws IOException {
        var opener = Files.createFile(
                folder.resolve("xdg-open"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwxr-xr-x")));
        var path = Map.of("PATH", "/nowhere:" + opener.getParent());

        assertThat(new Viewer("Linux", path).command()).isEmpty();
        assertThat(new Viewer("Linux", with(path, "DISPLAY", ":0")).command()).contains(List.of("xdg-open"));
        assertThat(new Viewer("Linux", with(path, "WAYLAND_DISPLAY", "wayland-0")).command())
                .contains(List.of("xdg-open"));
        assertThat(new Viewer("Linux", Map.of("PATH", "/nowhere", "DISPLAY", ":0")).command())
                .isEmpty();
        assertThat(new Viewer("Linux", Map.of("BROWSER", "firefox:w3m")).command())
                .contains(List.of("firefox"));
        assertThat(new Viewer("Mac OS X", Map.of()).command()).contains(List.of("open"));
        assertThat(new Viewer("Windows 11", Map.of()).command())
                .contains(List.of("rundll32", "url.dll,FileProtocolHandler"));
    }

    @Test
    @DisplayName("what shows the page is given its address; a program that is not there does no harm")
    void started() throws IOException, InterruptedException {
        var said = folder.resolve("said.txt");
        var browser = Files.createFile(
                folder.resolve("browser"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwxr-xr-x")));
        Files.writeString(
                browser, "#!/bin/sh\nprintf %s \"$1\" > '" + said + ".part'\nmv '" + said + ".part' '" + said + "'\n");
        var page = folder.resolve("a page.html");

        assertThat(new Viewer("Linux", Map.of("BROWSER", browser.toString())).show(page))
                .isTrue();
        for (int i = 0; i < 200 && !Files.exists(said); i++) {
            Thread.sleep(50);
        }
        assertThat(said).hasContent(page.toUri().toString());
        assertThat(new Viewer("Linux", Map.of("BROWSER", folder.resolve("none").toString())).show(page))
                .isFalse();
    }

    private static Map<String, String> with(Map<String, String> others, String name, String value) {
        var all = new HashMap<>(others);
        all.put(name, value);
        return all;
    }
}
