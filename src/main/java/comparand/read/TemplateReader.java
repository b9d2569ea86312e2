package comparand.read;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Span;
import comparand.digest.Sha;
import comparand.flow.Outcome;
import comparand.model.template.CommitteeTemplate;
import comparand.model.template.LookRecord;
import comparand.model.template.ManuscriptTemplate;
import comparand.model.template.PageTemplate;
import comparand.model.template.TalkTemplate;
import comparand.model.template.Templates;
import comparand.read.yaml.Binder;
import comparand.read.yaml.RecordBytes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/** Reads the templates of a house; where it has none of its own, those the tool brings. */
public final class TemplateReader {

    private static final String SHIPPED = "/comparand/templates/";
    private static final String FOLDER = "templates/";

    /** Slides of a house with its pictures, or a typeface with all scripts. */
    private static final int LARGEST = 100_000_000;

    private final Path folder;
    private final List<Diagnostic> findings = new ArrayList<>();
    private final SortedMap<String, byte[]> files = new TreeMap<>();
    private final SortedMap<String, String> fingerprints = new TreeMap<>();

    private TemplateReader(Path folder) {
        this.folder = folder;
    }

    /** The templates of a folder, each replacing the one the tool brings; the folder need not be there. */
    public static Outcome<Templates> read(Path folder) {
        return new TemplateReader(folder).read();
    }

    private Outcome<Templates> read() {
        var talk = template("talk", TalkTemplate.class, TalkTemplate::template);
        var committee = template("committee", CommitteeTemplate.class, CommitteeTemplate::template);
        var manuscript = template("manuscript", ManuscriptTemplate.class, ManuscriptTemplate::template);
        var page = template("page", PageTemplate.class, PageTemplate::template);
        talk.flatMap(TalkTemplate::look).ifPresent(this::fonts);
        talk.flatMap(TalkTemplate::slides).ifPresent(this::beside);
        committee.flatMap(CommitteeTemplate::look).ifPresent(this::fonts);
        manuscript.flatMap(ManuscriptTemplate::look).ifPresent(this::fonts);
        return talk.isEmpty() || committee.isEmpty() || manuscript.isEmpty() || page.isEmpty()
                ? Outcome.stopped(findings)
                : Outcome.of(
                        new Templates(talk.get(), committee.get(), manuscript.get(), page.get(), files, fingerprints),
                        findings);
    }

    private <T extends Record> Optional<T> template(String name, Class<T> type, Function<T, Located<String>> id) {
        var file = FOLDER + name + ".yaml";
        try {
            var own = folder.resolve(name + ".yaml");
            byte[] bytes;
            if (Files.isRegularFile(own)) {
                bytes = RecordBytes.of(own);
                fingerprints.put(file, Sha.of(bytes));
            } else {
                bytes = shipped(name);
            }
            var record = Binder.read(file, bytes, type, findings);
            record.map(id)
                    .filter(i -> !i.value().equals(name))
                    .ifPresent(i -> findings.add(Diagnostic.stop(
                            "id-not-file-name",
                            i.span(),
                            "this template is called `%s`, and its file `%s`".formatted(i.value(), name),
                            "a template is found by the name of its file",
                            "write `template: %s`".formatted(name))));
            return record;
        } catch (IOException e) {
            unreadable(Span.startOf(file), file);
            return Optional.empty();
        }
    }

    private static byte[] shipped(String name) throws IOException {
        try (var in = TemplateReader.class.getResourceAsStream(SHIPPED + name + ".yaml")) {
            if (in == null) {
                throw new IllegalStateException("the template " + name + " is missing from the program");
            }
            return in.readAllBytes();
        }
    }

    private void fonts(LookRecord look) {
        look.fonts().ifPresent(fonts -> {
            beside(fonts.regular());
            beside(fonts.strong());
        });
    }

    /** A file that a template names: it lies in the folder of the templates and nowhere else. */
    private void beside(Located<String> name) {
        if (!name.value().matches("[\\w][\\w .-]*")) {
            findings.add(Diagnostic.stop(
                    "template-file-elsewhere",
                    name.span(),
                    "`%s` is not the name of a file beside this one".formatted(name.value()),
                    "templates must be whole when they are handed on",
                    "copy the file into the folder of the templates, and write its name alone"));
            return;
        }
        var path = folder.resolve(name.value());
        if (Files.isSymbolicLink(path)) {
            findings.add(Diagnostic.stop(
                    "template-file-elsewhere",
                    name.span(),
                    "`%s` is a link to a file that lies elsewhere".formatted(name.value()),
                    "templates must be whole when they are handed on",
                    "copy what it leads to in its place"));
            return;
        }
        try {
            var bytes = RecordBytes.of(path, LARGEST);
            files.put(name.value(), bytes);
            fingerprints.put(FOLDER + name.value(), Sha.of(bytes));
        } catch (IOException e) {
            unreadable(name.span(), name.value());
        }
    }

    private void unreadable(Span span, String file) {
        findings.add(Diagnostic.stop(
                "file-unreadable",
                span,
                "`%s` could not be read".formatted(file),
                "a report is set as its template says, or not at all",
                "check that it lies in the folder of the templates, is whole, and may be read"));
    }
}
