import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Components of a bill of materials, as CycloneDX 1.6 writes them in JSON. */
final class Bill {

    private static final ObjectMapper JSON = new ObjectMapper();

    private Bill() {}

    /** A part that is no Maven library: with the fingerprint of each of its files. */
    static ObjectNode component(Entry part, Path classes) throws IOException {
        var component = JSON.createObjectNode();
        component.put("type", "library");
        component.put("bom-ref", part.folder());
        component.put("name", part.name());
        component.put("version", part.version());
        component.put("description", part.note());
        component.put("scope", "required");
        license(component, part.licence());
        component.put("copyright", part.copyright());
        if (!part.home().isEmpty()) {
            component.putArray("externalReferences").addObject().put("type", "website").put("url", part.home());
        }
        var files = component.putArray("components");
        for (var file : part.files()) {
            var one = files.addObject();
            one.put("type", "file");
            one.put("bom-ref", part.folder() + "/" + file);
            one.put("name", file);
            var hash = sha256(Files.readAllBytes(classes.resolve(file)));
            one.putArray("hashes").addObject().put("alg", "SHA-256").put("content", hash);
            license(one, part.licence());
        }
        return component;
    }

    /** Sets the licence: one SPDX identifier, or an expression of several. */
    static void license(ObjectNode component, String licence) {
        var one = component.putArray("licenses").addObject();
        if (licence.contains(" ")) {
            one.put("expression", licence);
        } else {
            one.putObject("license").put("id", licence);
        }
    }

    /** The SPDX identifier that a library's project file was understood to give; else what it says, to be read by a person. */
    static String declared(ObjectNode library) {
        var ids = library.path("licenses").findValuesAsText("id");
        return ids.size() == 1 ? ids.get(0) : library.path("licenses").toString();
    }

    static String hash(ObjectNode library) {
        for (var hash : library.path("hashes")) {
            if (hash.get("alg").asText().equals("SHA-256")) {
                return hash.get("content").asText();
            }
        }
        return "";
    }

    static String home(ObjectNode library) {
        for (var reference : library.path("externalReferences")) {
            if (reference.get("type").asText().equals("website")) {
                return reference.get("url").asText();
            }
        }
        return "";
    }

    /** The bill as text, the same on every system. */
    static String asJson(ObjectNode bill) throws JsonProcessingException {
        var indenter = new DefaultIndenter("  ", "\n");
        var printer = new DefaultPrettyPrinter().withObjectIndenter(indenter);
        printer.indentArraysWith(indenter);
        return JSON.writer(printer).writeValueAsString(bill) + "\n";
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
