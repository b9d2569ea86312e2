package comparand.shipped;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.support.Built;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.Source;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** The bill of materials and the notices, held against the files that are shipped. */
class BillOfMaterialsIT {

    private static final Path LIB = Shipment.APP.resolve("lib");
    private static final Path XML = Shipment.APP.resolve("sbom/comparand.cdx.xml");

    /** What may be shipped: licences that let others use, change and hand on. */
    private static final Set<String> ALLOWED = Set.of(
            "Apache-2.0",
            "MIT",
            "BSD-2-Clause",
            "BSD-3-Clause",
            "MPL-2.0 OR LGPL-2.1-or-later",
            "OFL-1.1",
            "CC-BY-SA-3.0");

    /** Words that each licence has in its text. */
    private static final Map<String, String> WORDS = Map.of(
            "Apache-2.0", "TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION",
            "MIT", "Permission is hereby granted, free of charge",
            "BSD-2-Clause", "Redistribution and use in source and binary forms",
            "BSD-3-Clause", "Redistribution and use in source and binary forms",
            "MPL-2.0 OR LGPL-2.1-or-later", "Mozilla Public License Version 2.0",
            "OFL-1.1", "SIL OPEN FONT LICENSE Version 1.1",
            "CC-BY-SA-3.0", "ShareAlike");

    private static JsonNode bill() throws IOException {
        return new ObjectMapper()
                .readTree(Shipment.APP.resolve("sbom/comparand.cdx.json").toFile());
    }

    @Test
    void everyJarIsListedWithItsFingerprintAndNoOther() throws Exception {
        var jars = new TreeMap<String, String>();
        try (Stream<Path> files = Files.list(LIB)) {
            for (var jar : files.filter(f -> f.toString().endsWith(".jar")).toList()) {
                jars.put(jar.toFile().getName(), sha256(Files.readAllBytes(jar)));
            }
        }
        // the tool itself is what the bill is of, and holds a copy of it: nothing can hold its own fingerprint
        jars.remove("comparand.jar");
        var listed = new TreeMap<String, String>();
        for (var c : Built.all(bill().get("components"))) {
            if (c.has("purl")) {
                listed.put(c.get("name").asText() + "-" + c.get("version").asText() + ".jar", hash(c));
            }
        }

        assertThat(listed).hasSizeGreaterThan(30).isEqualTo(jars);
        assertThat(bill().at("/metadata/component/name").asText()).isEqualTo("comparand");
        assertThat(bill().at("/metadata/component/version").asText()).isEqualTo(Shipment.VERSION);
        assertThat(bill().has("serialNumber") || bill().at("/metadata").has("timestamp"))
                .isFalse();
    }

    @Test
    void everyResourceOfTheToolIsListedWithItsFingerprint() throws Exception {
        var listed = new TreeMap<String, String>();
        for (var part : Built.all(bill().get("components"))) {
            Built.all(part.path("components"))
                    .forEach(f -> listed.put(f.get("name").asText(), hash(f)));
        }
        var held = new TreeMap<String, String>();
        try (var jar = new JarFile(LIB.resolve("comparand.jar").toFile())) {
            for (var entry : jar.stream().toList()) {
                if (entry.getName().startsWith("comparand/") && !entry.getName().matches(".*(/|\\.class)")) {
                    held.put(entry.getName(), sha256(jar.getInputStream(entry).readAllBytes()));
                }
            }
        }

        assertThat(listed).isEqualTo(held);
        assertThat(listed.keySet())
                .anyMatch(n -> n.endsWith(".ttf"))
                .anyMatch(n -> n.endsWith(".woff2"))
                .anyMatch(n -> n.endsWith(".csl"))
                .anyMatch(n -> n.endsWith(".js"));
    }

    @Test
    void everyPartHasAnAllowedLicenceAndItsText() throws Exception {
        var notices = Files.readString(Shipment.APP.resolve("THIRD-PARTY.txt"));
        for (var part : Built.all(bill().get("components"))) {
            var name = part.get("name").asText();
            var version = part.get("version").asText();
            var licence = licence(part);
            assertThat(ALLOWED).as(name).contains(licence);
            assertThat(notices).contains("\n" + name + " " + version + "\n  licence: " + licence + "\n");
            var texts = Shipment.APP.resolve("licences").resolve(name.replace(' ', '-') + "-" + version);
            var all = new StringBuilder();
            try (Stream<Path> files = Files.list(texts)) {
                for (var file : files.toList()) {
                    all.append(Files.readString(file, StandardCharsets.ISO_8859_1));
                }
            }
            assertThat(all.toString().replaceAll("\\s+", " ")).as(name).contains(requireNonNull(WORDS.get(licence)));
        }
    }

    @Test
    void theOneJarHoldsEveryTextEveryServiceAndEveryClass() throws Exception {
        var own = new TreeSet<String>();
        var services = new TreeMap<String, Set<String>>();
        try (var one = new JarFile(Shipment.ONE_JAR.toFile())) {
            one.stream().forEach(e -> own.add(e.getName()));
            try (Stream<Path> jars = Files.list(LIB)) {
                for (var path : jars.filter(f -> f.toString().endsWith(".jar")).toList()) {
                    try (var jar = new JarFile(path.toFile())) {
                        for (var entry :
                                jar.stream().filter(e -> !e.isDirectory()).toList()) {
                            var name = entry.getName();
                            if (name.endsWith(".class") && !name.endsWith("module-info.class")) {
                                assertThat(own).contains(name);
                            } else if (name.startsWith("META-INF/services/")) {
                                services.computeIfAbsent(name, n -> new TreeSet<>())
                                        .addAll(providers(jar, name));
                            }
                        }
                    }
                }
            }
            assertThat(services).hasSizeGreaterThan(8);
            for (var service : services.entrySet()) {
                assertThat(providers(one, service.getKey())).isEqualTo(service.getValue());
            }
            assertThat(one.getManifest().getMainAttributes().getValue("Multi-Release"))
                    .isEqualTo("true");
            assertThat(one.getManifest().getMainAttributes().getValue("Class-Path"))
                    .isNull();
        }
        try (Stream<Path> texts = Files.walk(Shipment.APP.resolve("licences"))) {
            assertThat(texts.filter(Files::isRegularFile))
                    .hasSizeGreaterThan(60)
                    .allMatch(t -> own.contains("META-INF/" + Shipment.APP.relativize(t)));
        }
        assertThat(own).contains("META-INF/THIRD-PARTY.txt", "META-INF/sbom/comparand.cdx.json");
    }

    @Test
    void theXmlSaysTheSameAndKeepsToItsSchema() throws Exception {
        var schemas = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
        var schema = schemas.newSchema(new Source[] {source("/spdx.xsd"), source("/bom-1.6.xsd")});
        schema.newValidator().validate(new StreamSource(XML.toFile()));

        var factory = DocumentBuilderFactory.newInstance();
        var components = factory.newDocumentBuilder().parse(XML.toFile()).getElementsByTagName("component");
        var inXml = new ArrayList<String>();
        for (int i = 0; i < components.getLength(); i++) {
            var component = (Element) components.item(i);
            inXml.add(child(component, "name") + " " + component.getAttribute("bom-ref"));
        }
        assertThat(inXml).containsExactlyInAnyOrderElementsOf(inJson(bill()));
    }

    private static List<String> inJson(JsonNode bill) {
        var all = new ArrayList<>(List.of(bill.at("/metadata/component")));
        all.addAll(Built.all(bill.at("/metadata/tools/components")));
        for (var component : Built.all(bill.get("components"))) {
            all.add(component);
            all.addAll(Built.all(component.path("components")));
        }
        return all.stream()
                .map(c -> c.get("name").asText() + " " + c.path("bom-ref").asText())
                .toList();
    }

    private static String child(Element element, String name) {
        return element.getElementsByTagName(name).item(0).getTextContent();
    }

    private static Source source(String resource) {
        var url = requireNonNull(BillOfMaterialsIT.class.getResource(resource), resource);
        return new StreamSource(url.toString());
    }

    private static Set<String> providers(JarFile jar, String service) throws IOException {
        var text = new String(jar.getInputStream(jar.getEntry(service)).readAllBytes(), StandardCharsets.UTF_8);
        var providers = new TreeSet<String>();
        text.lines()
                .map(l -> l.replaceFirst("#.*", "").strip())
                .filter(l -> !l.isEmpty())
                .forEach(providers::add);
        return providers;
    }

    private static String licence(JsonNode component) {
        var one = component.at("/licenses/0");
        return one.has("expression")
                ? one.get("expression").asText()
                : one.at("/license/id").asText();
    }

    private static String hash(JsonNode component) {
        return Built.all(component.get("hashes")).stream()
                .filter(h -> h.get("alg").asText().equals("SHA-256"))
                .map(h -> h.get("content").asText())
                .findFirst()
                .orElseThrow();
    }

    private static String sha256(byte[] bytes) throws Exception {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    }
}
