package comparand.read.yaml;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Builds the tree of a file from parsing events, without recursion, so that nesting costs no stack. */
final class YamlTree {

    private static final int DEEPEST = 40;
    private static final int LONGEST_WORD = 24;

    private static final LoadSettings SETTINGS = LoadSettings.builder()
            .setCodePointLimit(YamlText.LARGEST_FILE)
            .setParseComments(false)
            .build();

    /** A source with 20 000 values has about 1 100 000; each takes some 150 bytes of memory. */
    static final int MOST_NODES = 2_000_000;

    private final String file;
    private final FileFindings findings;
    private final Deque<Open> open = new ArrayDeque<>();
    private Optional<Node> root = Optional.empty();
    private final Map<String, String> words = new HashMap<>();
    private int documents;
    private int nodes;

    private YamlTree(String file, FileFindings findings) {
        this.file = file;
        this.findings = findings;
    }

    /** The mapping a file holds; empty when a STOP was added to the findings. */
    static Optional<Node.Mapping> read(String file, byte[] bytes, List<Diagnostic> findings) {
        int before = findings.size();
        var root = any(file, bytes, findings);
        if (findings.size() > before) {
            return Optional.empty();
        }
        boolean empty = root.isEmpty() || (root.get() instanceof Node.Scalar s && s.isEmpty());
        if (empty || !(root.get() instanceof Node.Mapping mapping)) {
            findings.add(Diagnostic.stop(
                    empty ? "file-empty" : "file-not-a-record",
                    empty ? Span.startOf(file) : root.get().span(),
                    empty
                            ? "this file holds nothing"
                            : "this file holds " + root.get().kind() + ", not a record",
                    "every file of a library is one record of keys and values",
                    "start from a blank record: `comparand start DIR` writes one of each kind"));
            return Optional.empty();
        }
        return Optional.of(mapping);
    }

    /** Whatever a file holds; empty when it holds nothing, or a STOP was added to the findings. */
    static Optional<Node> any(String file, byte[] bytes, List<Diagnostic> findings) {
        return YamlText.decode(file, bytes, findings).flatMap(text -> {
            var own = new FileFindings(findings);
            var tree = new YamlTree(file, own);
            try {
                tree.compose(text);
            } catch (FileFindings.Enough e) {
                return Optional.empty();
            }
            return own.isEmpty() ? tree.root : Optional.empty();
        });
    }

    private void compose(String text) {
        try {
            for (var event : new Parse(SETTINGS).parseString(text)) {
                if (!accept(event)) {
                    return;
                }
            }
        } catch (MarkedYamlEngineException e) {
            findings.add(YamlProblem.of(e, file));
        } catch (ReaderException e) {
            findings.add(YamlProblem.of(e, text, file));
        } catch (YamlEngineException e) {
            findings.add(YamlProblem.of(e, file));
        }
    }

    /** Takes one event; false when reading on makes no sense. */
    private boolean accept(Event event) {
        if (event instanceof NodeEvent node
                && !(event instanceof AliasEvent)
                && node.getAnchor().isPresent()) {
            refuse(
                    "yaml-anchor",
                    span(event),
                    "anchors such as `&%s` are not used here"
                            .formatted(node.getAnchor().get()),
                    "write the value out where it belongs");
        }
        switch (event.getEventId()) {
            case DocumentStart -> {
                if (++documents > 1) {
                    refuse(
                            "yaml-several-documents",
                            span(event),
                            "a second document starts here",
                            "keep one record per file");
                    return false;
                }
            }
            case Alias -> {
                refuse(
                        "yaml-alias",
                        span(event),
                        "the alias `*%s` stands for something written elsewhere"
                                .formatted(((AliasEvent) event).getAlias()),
                        "write the value out where it belongs");
                place(new Node.Scalar("", span(event), span(event)));
            }
            case Scalar -> {
                return scalar((ScalarEvent) event);
            }
            case SequenceStart -> {
                tag(((SequenceStartEvent) event).getTag(), event);
                return push(new Open(span(event), false));
            }
            case MappingStart -> {
                tag(((MappingStartEvent) event).getTag(), event);
                return push(new Open(span(event), true));
            }
            case SequenceEnd, MappingEnd -> place(open.pop().close());
            case StreamStart, StreamEnd, DocumentEnd, Comment -> {
                // nothing to build
            }
        }
        return true;
    }

    private boolean push(Open next) {
        if (open.size() >= DEEPEST) {
            refuse(
                    "yaml-too-deep",
                    next.span,
                    "this is nested more than %d levels deep".formatted(DEEPEST),
                    "no record needs more than six levels; check the indentation and brackets");
            return false;
        }
        open.push(next);
        return isCounted(next.span);
    }

    private boolean scalar(ScalarEvent event) {
        tag(event.getTag(), event);
        var span = span(event);
        var text = kept(event.getValue());
        boolean escaped = event.getScalarStyle() == ScalarStyle.DOUBLE_QUOTED;
        boolean quoted = escaped || event.getScalarStyle() == ScalarStyle.SINGLE_QUOTED;
        place(new Node.Scalar(text, span, quoted ? span.part(1, Math.max(1, span.length() - 2)) : span));
        TextFault.in(text, escaped).forEach(f -> refuse(f.code(), span, f.message(), f.fix()));
        return isCounted(span);
    }

    /** False when the file holds more than can be a record. */
    private boolean isCounted(Span span) {
        if (++nodes <= MOST_NODES) {
            return true;
        }
        refuse(
                "yaml-too-many",
                span,
                "this file holds more than %d keys and values".formatted(MOST_NODES),
                "split it into several records, or move raw data into a CSV or XLSX file of a study");
        return false;
    }

    /** Short words stand in a file again and again; each is kept once, or a large library would not fit into memory. */
    private String kept(String text) {
        if (text.length() > LONGEST_WORD) {
            return text;
        }
        var first = words.putIfAbsent(text, text);
        return first == null ? text : first;
    }

    private void tag(Optional<String> tag, Event event) {
        tag.ifPresent(t -> refuse(
                "yaml-tag",
                span(event),
                "the tag `%s` asks for a type".formatted(t),
                "leave the tag out: each key has one type already"));
    }

    private void place(Node node) {
        var parent = open.peek();
        if (parent == null) {
            root = Optional.of(node);
        } else {
            parent.add(node, this);
        }
    }

    private void refuse(String code, Span span, String message, String fix) {
        findings.add(
                Diagnostic.stop(code, span, message, "records are read the same way by people and by this tool", fix));
    }

    private Span span(Event event) {
        var start = event.getStartMark();
        var end = event.getEndMark();
        int line = start.map(Mark::getLine).orElse(0);
        int column = start.map(Mark::getColumn).orElse(0);
        boolean sameLine = end.map(Mark::getLine).orElse(-1) == line;
        int length = sameLine ? end.map(Mark::getColumn).orElse(column) - column : 1;
        return new Span(file, line + 1, column + 1, Math.max(1, length));
    }

    /** A list or mapping whose end has not been read yet. */
    private static final class Open {
        private final Span span;
        private final boolean mapping;
        private final List<Node> items = new ArrayList<>();
        private final Map<String, Node.Entry> entries = new LinkedHashMap<>();
        private Optional<Node> key = Optional.empty();

        Open(Span span, boolean mapping) {
            this.span = span;
            this.mapping = mapping;
        }

        void add(Node node, YamlTree tree) {
            if (!mapping) {
                items.add(node);
            } else if (key.isEmpty()) {
                key = Optional.of(node);
            } else {
                entry(key.get(), node, tree);
                key = Optional.empty();
            }
        }

        private void entry(Node keyNode, Node value, YamlTree tree) {
            if (!(keyNode instanceof Node.Scalar word) || word.text().isEmpty()) {
                tree.refuse(
                        "yaml-key",
                        keyNode.span(),
                        "a key is a word, not " + keyNode.kind(),
                        "write a word before the colon");
            } else if (word.text().equals("<<")) {
                tree.refuse("yaml-merge", word.span(), "`<<` would merge keys from elsewhere", "write the keys out");
            } else if (entries.containsKey(word.text())) {
                tree.refuse(
                        "duplicate-key",
                        word.span(),
                        "the key `%s` stands here a second time, first on line %d"
                                .formatted(
                                        word.text(),
                                        entries.get(word.text()).key().span().line()),
                        "keep one of the two");
            } else {
                entries.put(word.text(), new Node.Entry(word, value));
            }
        }

        Node close() {
            return mapping ? new Node.Mapping(entries, span) : new Node.Sequence(items, span);
        }
    }
}
