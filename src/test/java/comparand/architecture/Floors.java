package comparand.architecture;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Who may use whom: one line per package. The law of the house; a package that is not listed here does not exist. */
final class Floors {

    /**
     * A package with what it may use beside the JDK, itself, and annotations for null.
     *
     * @param ours packages of this project
     * @param libraries packages of others, with all below them
     */
    record Room(Set<String> ours, Set<String> libraries) {}

    static final Map<String, Room> TABLE = new TreeMap<>();

    static {
        // floor 0
        room("diag");
        room("digest");
        room("stat").with("org.apache.commons.math3", "org.apache.commons.rng", "org.apache.commons.statistics");
        room("cite").with("de.undercouch.citeproc", "org.apache.commons.text");
        room("document", "document.chart");
        room("document.chart");
        room("document.talk", "document", "document.chart");
        room("document.talk.layout", "document", "document.chart", "document.talk");
        room("document.exploration", "document");
        room(
                "document.publication",
                "document",
                "document.chart",
                "document.talk",
                "document.exploration",
                "document.result");
        room("document.result");
        room("document.record");
        room("document.form", "document");
        // floor 1
        room("unit", "diag").with("org.apache.commons.numbers.fraction");
        room("flow", "diag");
        // floor 2
        room("metric", "unit");
        // floor 3
        room("model", "model.library", "metric", "unit", "stat", "diag");
        room("model.library", "metric", "unit", "stat", "diag");
        room("model.template", "model.library", "diag");
        // floor 4: the stages see the floors below them, and never each other
        stage("read", "model.template", "read.yaml", "read.csv", "read.workbook");
        room("read.csv", "model", "model.library", "diag").with("de.siegmar.fastcsv");
        room("read.yaml", "model.library", "model.template", "document.record", "unit", "flow", "diag")
                .with("org.snakeyaml.engine", "com.fasterxml.jackson.databind");
        room("read.results", "document.result", "flow", "diag").with("com.fasterxml.jackson");
        room("read.workbook", "model", "unit", "flow", "diag")
                .with(
                        "org.apache.poi",
                        "org.apache.commons.compress.archivers.zip",
                        "org.xml.sax",
                        "javax.xml.parsers");
        room("read.proposal", "read.csv", "read.workbook", "model", "model.library", "metric", "unit", "diag");
        stage("check");
        room("reference", "model.library", "document.record", "diag").with("org.apache.commons.text");
        room("reference.format", "reference", "model.library", "diag").with("com.fasterxml.jackson");
        stage("intake", "document", "document.form", "document.record");
        stage("study", "study.quality");
        room("study.quality", "metric", "unit");
        stage("normalise");
        stage("match");
        stage("compare");
        // composing: words first, then results as data, then one package per kind of document
        stage("compose.text", "model.template", "document");
        stage("compose.results", "compose.text", "document.result");
        stage(
                "compose.table",
                "compose.text",
                "compose.results",
                "compose.figure",
                "document",
                "document.chart",
                "document.result");
        stage("compose.figure", "compose.text", "compose.results", "document", "document.chart", "document.result");
        room("compose.ledger", "compose.text", "document", "document.result", "model");
        stage("compose.brief", "compose.text", "compose.table", "model.template", "document", "document.result");
        stage(
                "compose.talk",
                "compose.text",
                "compose.results",
                "compose.figure",
                "model.template",
                "document",
                "document.chart",
                "document.talk",
                "document.talk.layout",
                "document.result");
        stage(
                "compose.manuscript",
                "cite",
                "compose.text",
                "compose.results",
                "compose.table",
                "compose.figure",
                "model.template",
                "document",
                "document.chart",
                "document.result");
        stage(
                "compose.page",
                "compose.text",
                "compose.results",
                "compose.table",
                "compose.figure",
                "model.template",
                "document",
                "document.chart",
                "document.exploration",
                "document.result");
        stage(
                "compose",
                "compose.brief",
                "compose.page",
                "compose.text",
                "compose.results",
                "compose.table",
                "compose.talk",
                "compose.figure",
                "compose.manuscript",
                "model.template",
                "document",
                "document.chart",
                "document.talk",
                "document.exploration",
                "document.result",
                "document.publication");
        // floor 4: the writers see the finished document, and one library each
        room("write", "document");
        room("write.office", "document").with("org.apache.poi");
        room("write.json", "document.result").with("com.fasterxml.jackson");
        room("write.xlsx", "write", "write.chart", "write.office", "document", "document.chart", "document.form")
                .with("org.apache.poi", "org.openxmlformats.schemas", "org.apache.commons.compress.archivers.zip");
        room("write.pdf", "write", "write.figure", "document", "document.chart")
                .with("com.lowagie", "javax.xml.stream");
        room("write.chart", "document.chart")
                .with("org.apache.poi", "org.apache.xmlbeans", "org.openxmlformats.schemas", "javax.xml.namespace");
        room(
                        "write.pptx",
                        "write.chart",
                        "write.office",
                        "document",
                        "document.chart",
                        "document.talk",
                        "document.talk.layout")
                .with("org.apache.poi", "org.openxmlformats.schemas");
        room("write.docx", "write", "write.figure", "write.office", "document", "document.chart")
                .with("org.apache.poi", "org.apache.xmlbeans", "org.openxmlformats.schemas", "javax.xml.namespace");
        room("write.figure", "write", "document", "document.chart").with("javax.imageio", "javax.xml.stream");
        room("write.html", "write.figure", "digest", "document", "document.chart", "document.exploration")
                .with("com.fasterxml.jackson");
        room("write.text", "write", "document");
        room("write.yaml", "document.record").with("org.snakeyaml.engine");
        room("write.whole", "digest");
        room("write.rebuild", "write.whole", "digest", "document");
        // floor 4: the manual sees the catalogue; records, commands and the tool are given to it as data
        room("manual.example").with("com.fasterxml.jackson.databind", "org.apache.poi");
        room("manual", "manual.example", "metric", "unit", "diag")
                .with("com.fasterxml.jackson.databind", "org.snakeyaml.engine", "org.commonmark");
        // floor 5
        var all = List.copyOf(TABLE.keySet());
        room("app", all.toArray(String[]::new)).with("picocli", "com.fasterxml.jackson.databind");
    }

    private Floors() {}

    /** The line of a package that is being written. */
    private record Line(String name, Room room) {
        void with(String... libraries) {
            TABLE.put(name, new Room(room.ours, Set.of(libraries)));
        }
    }

    private static Line room(String name, String... ours) {
        var line = new Line(name, new Room(Set.of(ours), Set.of()));
        TABLE.put(name, line.room);
        return line;
    }

    private static Line stage(String name, String... more) {
        var below = Stream.of("model", "model.library", "metric", "unit", "flow", "stat", "diag", "digest");
        return room(name, Stream.concat(below, Stream.of(more)).toArray(String[]::new));
    }
}
