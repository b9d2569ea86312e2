package comparand.read;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.diag.Diagnostic;
import comparand.flow.Outcome;
import comparand.model.template.CommitteeTemplate;
import comparand.model.template.ManuscriptTemplate;
import comparand.model.template.TalkTemplate;
import comparand.model.template.Templates;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What reports contain is read from a house's own templates, or else from those the tool brings. */
class TemplateReaderTest {

    @TempDir
    Path folder;

    @Test
    @DisplayName(
            "without a folder of its own, a house is given the templates the tool brings, with every part in its order")
    void shipped() {
        var templates = read(folder.resolve("not there"));

        assertThat(templates.talk().sections().stream().map(s -> s.value()))
                .containsExactly(TalkTemplate.Section.values());
        assertThat(templates.committee().sections().stream().map(s -> s.value()))
                .containsExactlyInAnyOrder(CommitteeTemplate.Section.values());
        assertThat(templates.manuscript().sections().stream().map(s -> s.value()))
                .containsExactly(ManuscriptTemplate.Section.values());
        assertThat(templates.fingerprints()).isEmpty();
    }

    @Test
    @DisplayName(
            "a template of the house replaces that one alone, with the files it names, and counts among the inputs")
    void own() throws IOException {
        Files.write(folder.resolve("house.pptx"), new byte[] {1, 2});
        Files.writeString(folder.resolve("talk.yaml"), """
                template: talk
                look: {house: Norrisgate, face: Carlito}
                slides: house.pptx
                sections: [answer, backup]
                wording:
                  draft: not for circulation
                """);

        var templates = read(folder);

        assertThat(templates.talk().sections()).hasSize(2);
        assertThat(templates.talk().wording().has("draft")).isTrue();
        assertThat(templates.file("house.pptx")).contains(new byte[] {1, 2});
        assertThat(templates.fingerprints()).containsOnlyKeys("templates/talk.yaml", "templates/house.pptx");
        assertThat(templates.committee().sections()).hasSameSizeAs(CommitteeTemplate.Section.values());
    }

    @Test
    @DisplayName(
            "all faults are found at once, each at its place: an unknown part, a wrong name, files elsewhere and missing")
    void faults() throws IOException {
        Files.writeString(folder.resolve("talk.yaml"), "template: talk\nsections: [answer, bakcup]\n");
        Files.writeString(
                folder.resolve("committee.yaml"),
                "template: comittee\nlook: {fonts: {regular: ../a.ttf, strong: b.ttf}}\nsections: [said]\n");

        var findings = TemplateReader.read(folder).fold((t, f) -> List.<Diagnostic>of(), f -> f);

        assertThat(findings.stream().map(f -> f.span() + " " + f.code()))
                .anyMatch(f -> f.startsWith("templates/talk.yaml:2:20"))
                .anyMatch(f -> f.startsWith("templates/committee.yaml:1:11") && f.endsWith("id-not-file-name"))
                .anyMatch(f -> f.startsWith("templates/committee.yaml:2:25") && f.endsWith("template-file-elsewhere"))
                .anyMatch(f -> f.startsWith("templates/committee.yaml:2:43") && f.endsWith("file-unreadable"));
        assertThat(findings.stream().map(Diagnostic::fix)).anyMatch(f -> f.contains("backup"));
    }

    private static Templates read(Path folder) {
        Outcome<Templates> outcome = TemplateReader.read(folder);
        return outcome.fold((templates, findings) -> templates, findings -> {
            throw new AssertionError(findings.toString());
        });
    }
}
