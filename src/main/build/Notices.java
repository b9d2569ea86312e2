import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * Writes the notices of what is shipped: {@code THIRD-PARTY.txt}, the texts of the licences in {@code licences/}, and the
 * bill of materials in {@code sbom/} (CycloneDX) with the parts that are no Maven libraries. Run while the tool is
 * packaged. It stops the build where a jar or a resource is not accounted for, or a licence is not among those
 * allowed.
 *
 * <p>Arguments: the project's folder, the packaged tool's folder (with {@code lib}), the folder of its classes. The bill of
 * the libraries is {@code src/main/licences/libraries.json}, as {@code mvn cyclonedx:makeBom} gathered it.
 */
final class Notices {

    private static final Pattern LEGAL =
            Pattern.compile("(META-INF/)?[^/]*(licen[cs]e|notice|copying|copyright)[^/]*", Pattern.CASE_INSENSITIVE);

    private static final String GATHER = ": run `mvn cyclonedx:makeBom` and look at what changed";

    private final Path root;
    private final Path app;
    private final Path classes;
    private final Map<?, ?> given;
    private final List<Entry> entries = new ArrayList<>();

    private Notices(Path root, Path app, Path classes) throws IOException {
        this.root = root;
        this.app = app;
        this.classes = classes;
        var settings = LoadSettings.builder().setLabel("parts.yaml").build();
        try (var in = Files.newInputStream(root.resolve("src/main/licences/parts.yaml"))) {
            this.given = (Map<?, ?>) new Load(settings).loadFromInputStream(in);
        }
    }

    public static void main(String[] arguments) throws Exception {
        var notices = new Notices(Path.of(arguments[0]), Path.of(arguments[1]), Path.of(arguments[2]));
        var bill = (ObjectNode) new ObjectMapper().readTree(notices.place("libraries.json").toFile());
        notices.libraries((ArrayNode) bill.get("components"));
        notices.parts((ArrayNode) bill.get("components"), bill);
        notices.write(bill);
    }

    private void libraries(ArrayNode components) throws Exception {
        var jars = new TreeSet<String>();
        try (Stream<Path> files = Files.list(app.resolve("lib"))) {
            files.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".jar")).forEach(jars::add);
        }
        jars.remove("comparand.jar");
        var known = map(given, "libraries");
        for (var component : components) {
            var library = (ObjectNode) component;
            var name = library.get("name").asText();
            var version = library.get("version").asText();
            var jar = name + "-" + version + ".jar";
            require(jars.remove(jar), jar + " stands in the bill of materials and not in lib" + GATHER);
            var bytes = Files.readAllBytes(app.resolve("lib").resolve(jar));
            require(Bill.sha256(bytes).equals(Bill.hash(library)), jar + " is not the file the bill of materials tells of" + GATHER);
            var more = known.containsKey(name) ? map(known, name) : Map.of();
            var licence = more.containsKey("licence") ? text(more, "licence") : Bill.declared(library);
            Bill.license(library, allowed(licence, name));
            var texts = textsOf(app.resolve("lib").resolve(jar));
            for (var extra : list(more, "texts")) {
                texts.put(nameOf(extra), Files.readAllBytes(place(extra)));
            }
            require(
                    texts.keySet().stream().anyMatch(t -> !t.toLowerCase().contains("notice")),
                    jar + " brings no text of its licence: give one in parts.yaml");
            entries.add(new Entry(name, version, licence, Bill.home(library), "", "", List.of("lib/" + jar), texts));
        }
        require(jars.isEmpty(), "not in the bill of materials: " + jars + GATHER);
    }

    private void parts(ArrayNode components, ObjectNode bill) throws Exception {
        var unclaimed = resources();
        for (var each : (List<?>) given.get("parts")) {
            var part = (Map<?, ?>) each;
            var globs = list(part, "files").stream()
                    .map(g -> FileSystems.getDefault().getPathMatcher("glob:" + g))
                    .toList();
            var files = unclaimed.stream()
                    .filter(f -> globs.stream().anyMatch(g -> g.matches(Path.of(f))))
                    .toList();
            var name = text(part, "name");
            require(!files.isEmpty(), name + " has no file");
            files.forEach(unclaimed::remove);
            boolean own = Boolean.TRUE.equals(part.get("own"));
            var version = own ? bill.at("/metadata/component/version").asText() : text(part, "version");
            var licence = allowed(text(part, "licence"), name);
            var texts = new TreeMap<String, byte[]>();
            for (var file : list(part, "texts")) {
                texts.put(nameOf(file), Files.readAllBytes(place(file)));
            }
            var home = part.containsKey("home") ? text(part, "home") : "";
            var entry = new Entry(
                    name, version, licence, home, text(part, "copyright"), text(part, "note"), files, texts);
            entries.add(entry);
            components.add(Bill.component(entry, classes));
        }
        require(unclaimed.isEmpty(), "resources that belong to no part of parts.yaml: " + unclaimed);
    }

    private void write(ObjectNode bill) throws Exception {
        var notices = listed(bill.at("/metadata/component/version").asText());
        var json = Bill.asJson(bill);
        var xml = BillAsXml.of(bill);
        for (var folder : List.of(app, classes.resolve("META-INF"))) {
            empty(folder.resolve("licences"));
            empty(folder.resolve("sbom"));
            Files.createDirectories(folder.resolve("sbom"));
            Files.writeString(folder.resolve("THIRD-PARTY.txt"), notices);
            Files.writeString(folder.resolve("sbom/comparand.cdx.json"), json);
            Files.writeString(folder.resolve("sbom/comparand.cdx.xml"), xml);
            for (var entry : entries) {
                var place = Files.createDirectories(folder.resolve("licences").resolve(entry.folder()));
                for (var text : entry.texts().entrySet()) {
                    Files.write(place.resolve(text.getKey()), text.getValue());
                }
            }
        }
    }

    private String listed(String version) {
        var out = new StringBuilder("What Comparand " + version + " is made of, under which licences\n\n");
        out.append("Comparand itself is under the Apache License 2.0. The texts named below lie in the folder `licences`\n")
                .append("beside this file; `sbom` says the same to programs. A PDF holds the sRGB colour profile of the Java\n")
                .append("that wrote it; none is shipped.\n");
        for (var entry : entries) {
            out.append("\n\n").append(entry.name()).append(' ').append(entry.version()).append('\n');
            line(out, "licence", entry.licence());
            line(out, "home", entry.home());
            line(out, "copyright", entry.copyright());
            line(out, "note", entry.note());
            entry.files().forEach(f -> line(out, "file", f));
            entry.texts().keySet().forEach(t -> line(out, "text", "licences/" + entry.folder() + "/" + t));
            entry.texts().forEach((name, text) -> {
                if (name.toLowerCase().contains("notice")) {
                    new String(text, StandardCharsets.UTF_8)
                            .strip()
                            .lines()
                            .forEach(l -> out.append(("    | " + l).stripTrailing()).append('\n'));
                }
            });
        }
        return out.toString();
    }

    private static void line(StringBuilder out, String name, String said) {
        if (!said.isEmpty()) {
            out.append("  ").append(name).append(": ").append(said).append('\n');
        }
    }

    private TreeSet<String> resources() throws IOException {
        try (Stream<Path> files = Files.walk(classes.resolve("comparand"))) {
            return files.filter(f -> Files.isRegularFile(f) && !f.toString().endsWith(".class"))
                    .map(f -> classes.relativize(f).toString().replace('\\', '/'))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static TreeMap<String, byte[]> textsOf(Path jar) throws IOException {
        var texts = new TreeMap<String, byte[]>();
        try (var file = new JarFile(jar.toFile())) {
            for (var entry : (Iterable<java.util.jar.JarEntry>) file.stream()::iterator) {
                if (!entry.isDirectory() && LEGAL.matcher(entry.getName()).matches()) {
                    var name = entry.getName().substring(entry.getName().lastIndexOf('/') + 1);
                    texts.put(name, file.getInputStream(entry).readAllBytes());
                }
            }
        }
        return texts;
    }

    /** A text by its place: the project's own licence, a resource of the jar, or a file beside parts.yaml. */
    private Path place(String file) {
        return file.equals("LICENSE")
                ? root.resolve(file)
                : file.startsWith("comparand/") ? classes.resolve(file) : root.resolve("src/main/licences").resolve(file);
    }

    /** The name of a text; a jar may have a file of its own by the name of ours. */
    private static String nameOf(String file) {
        return file.equals("LICENSE") ? "Apache-2.0.txt" : Path.of(file).getFileName().toString();
    }

    private String allowed(String licence, String of) {
        require(list(given, "allowed").contains(licence), of + " is under " + licence + ", which is not among the allowed");
        return licence;
    }

    private static void empty(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private static Map<?, ?> map(Map<?, ?> of, String key) {
        return (Map<?, ?>) of.get(key);
    }

    private static String text(Map<?, ?> of, String key) {
        require(of.get(key) instanceof String, "parts.yaml: " + key + " is missing in " + of);
        return (String) of.get(key);
    }

    private static List<String> list(Map<?, ?> of, String key) {
        return of.containsKey(key) ? ((List<?>) of.get(key)).stream().map(String::valueOf).toList() : List.of();
    }

    private static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalStateException(otherwise);
        }
    }
}
