package comparand.write.yaml;

import comparand.document.record.Entry;
import comparand.document.record.Field;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** A text with its tree, whose nodes know where in the text they stand, counted in code points. */
final class RecordTree {

    private final int[] signs;
    private final MappingNode root;

    private RecordTree(int[] signs, MappingNode root) {
        this.signs = signs;
        this.root = root;
    }

    static RecordTree of(String text) {
        var settings = LoadSettings.builder()
                .setLabel("record")
                .setCodePointLimit(Integer.MAX_VALUE)
                .setAllowDuplicateKeys(false)
                .setMaxAliasesForCollections(0)
                .build();
        Optional<Node> root;
        try {
            root = new Compose(settings).composeString(text);
        } catch (YamlEngineException e) {
            throw new IllegalArgumentException("not a record: " + e.getMessage(), e);
        }
        if (root.isEmpty() || !(root.get() instanceof MappingNode mapping)) {
            throw new IllegalArgumentException("not a record: its text holds no keys");
        }
        return new RecordTree(text.codePoints().toArray(), mapping);
    }

    MappingNode root() {
        return root;
    }

    /** How many signs the text has, counted as code points. */
    int length() {
        return signs.length;
    }

    /** The sign at a place of the text. */
    int sign(int at) {
        return signs[at];
    }

    Entry.Fields entry() {
        return (Entry.Fields) entry(root);
    }

    /** What a node says. */
    Entry entry(Node node) {
        if (node instanceof MappingNode mapping) {
            return new Entry.Fields(mapping.getValue().stream()
                    .map(t -> new Field(text(t.getKeyNode()), entry(t.getValueNode())))
                    .toList());
        }
        if (node instanceof SequenceNode sequence) {
            return new Entry.Items(sequence.getValue().stream().map(this::entry).toList());
        }
        return new Entry.Words(text(node));
    }

    static String text(Node node) {
        if (node instanceof ScalarNode scalar) {
            return scalar.getValue();
        }
        throw new IllegalArgumentException("not a record: a key is a word");
    }

    static int start(Node node) {
        return node.getStartMark().map(Mark::getIndex).orElseThrow();
    }

    /** Behind the last sign of a node; of lines below each other, behind the last of its parts. */
    int end(Node node) {
        if (node instanceof MappingNode mapping && isBlock(mapping)) {
            return end(mapping.getValue().get(mapping.getValue().size() - 1).getValueNode());
        }
        if (node instanceof SequenceNode sequence && isBlock(sequence)) {
            return end(sequence.getValue().get(sequence.getValue().size() - 1));
        }
        int end = node.getEndMark().map(Mark::getIndex).orElseThrow();
        // a text over several lines ends, for the library, with its last line end
        while (end > start(node) && Character.isWhitespace(signs[end - 1])) {
            end--;
        }
        return end;
    }

    /** Whether it is written on lines of its own, with something in it. */
    static boolean isBlock(CollectionNode<?> node) {
        return node.getFlowStyle() == FlowStyle.BLOCK && !node.getValue().isEmpty();
    }
}
