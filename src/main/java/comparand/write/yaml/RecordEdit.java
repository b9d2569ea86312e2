package comparand.write.yaml;

import comparand.document.record.Entry;
import comparand.document.record.Field;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Changes the text of a record so that it says what it should, and nothing else of it: lines that say the same keep their
 * bytes, with their comments. So version control shows what changed, and what somebody noted beside it stays.
 *
 * <p>Keys that are new stand where the wanted record has them; items of a list are told apart by their {@code id}, or by their
 * place. Their order in the file stays.
 */
public final class RecordEdit {

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final RecordTree tree;
    private final Changes changes;

    private RecordEdit(RecordTree tree) {
        this.tree = tree;
        this.changes = new Changes(tree);
    }

    /**
     * The text that says what is wanted.
     *
     * @param text a file that can be read: one mapping, without anchors, aliases and tags
     * @throws IllegalArgumentException if it is no such file
     */
    public static String apply(String text, Entry.Fields wanted) {
        if (text.startsWith(BYTE_ORDER_MARK)) {
            return BYTE_ORDER_MARK + apply(text.substring(1), wanted);
        }
        var tree = RecordTree.of(text);
        if (tree.entry().saysTheSameAs(wanted)) {
            return text;
        }
        var edit = new RecordEdit(tree);
        if (!edit.keepsOneKey(tree.root(), wanted)) {
            // nothing of the old record stays
            return RecordYaml.text(wanted, List.of());
        }
        edit.mapping(tree.root(), wanted);
        var changed = edit.changes.applied();
        if (!RecordTree.of(changed).entry().saysTheSameAs(wanted)) {
            throw new IllegalStateException("the changed text would not say what is wanted:\n" + changed);
        }
        return changed;
    }

    private void mapping(MappingNode node, Entry.Fields wanted) {
        var entries = node.getValue();
        int indent = changes.columnOf(key(entries.get(0)));
        int kept = 0;
        while (wanted.get(word(entries.get(kept))).isEmpty()) {
            kept++;
        }
        boolean behindDash = changes.sharesItsLine(key(entries.get(0)));
        if (kept > 0 && behindDash) {
            // the first key that stays moves up behind the dash
            changes.removeUpTo(key(entries.get(0)), key(entries.get(kept)));
        }
        for (int i = behindDash ? kept : 0; i < entries.size(); i++) {
            var entry = entries.get(i);
            wanted.get(word(entry))
                    .ifPresentOrElse(
                            value -> value(entry, new Field(word(entry), value), indent),
                            () -> changes.removeLines(key(entry), entry.getValueNode()));
        }
        Optional<NodeTuple> before = Optional.empty();
        for (var field : wanted.list()) {
            var there =
                    entries.stream().filter(e -> word(e).equals(field.key())).findFirst();
            if (there.isPresent()) {
                before = there;
            } else {
                var text = RecordYaml.field(field, indent);
                if (before.isPresent()) {
                    changes.insertBelow(before.get().getValueNode(), key(before.get()), indent, text);
                } else {
                    changes.insertAbove(key(entries.get(kept)), indent, text);
                }
            }
        }
    }

    private void value(NodeTuple entry, Field wanted, int indent) {
        var node = entry.getValueNode();
        if (tree.entry(node).saysTheSameAs(wanted.value())) {
            return;
        }
        if (node instanceof MappingNode mapping
                && RecordTree.isBlock(mapping)
                && wanted.value() instanceof Entry.Fields fields
                && keepsOneKey(mapping, fields)) {
            mapping(mapping, fields);
        } else if (node instanceof SequenceNode sequence
                && RecordTree.isBlock(sequence)
                && wanted.value() instanceof Entry.Items items
                && keepsOneItem(sequence, items)) {
            sequence(sequence, wanted.key(), items);
        } else {
            changes.replaceBehindColon(key(entry), node, RecordYaml.value(wanted, indent));
        }
    }

    /** Whether some key stays, so that new ones have a neighbour. */
    private boolean keepsOneKey(MappingNode node, Entry.Fields wanted) {
        return node.getValue().stream().anyMatch(e -> wanted.get(word(e)).isPresent());
    }

    private boolean keepsOneItem(SequenceNode node, Entry.Items wanted) {
        return node.getValue().stream().anyMatch(n -> partner(node, n, wanted).isPresent());
    }

    private void sequence(SequenceNode node, String key, Entry.Items wanted) {
        var old = node.getValue();
        int indent = changes.columnOf(node);
        for (var item : old) {
            var partner = partner(node, item, wanted);
            if (partner.isEmpty()) {
                changes.removeLines(item, item);
            } else if (!tree.entry(item).saysTheSameAs(partner.get())) {
                if (item instanceof MappingNode mapping
                        && RecordTree.isBlock(mapping)
                        && partner.get() instanceof Entry.Fields fields
                        && keepsOneKey(mapping, fields)) {
                    mapping(mapping, fields);
                } else {
                    changes.replace(item, RecordYaml.inline(key, partner.get()));
                }
            }
        }
        Optional<Node> before = Optional.empty();
        for (var item : wanted.list()) {
            var there = old.stream()
                    .filter(n -> partner(node, n, wanted).filter(p -> p == item).isPresent())
                    .findFirst();
            if (there.isPresent()) {
                before = there;
            } else {
                var text = RecordYaml.item(key, item, indent);
                if (before.isPresent()) {
                    changes.insertBelow(before.get(), before.get(), indent, text);
                } else {
                    changes.insertAboveItem(firstKept(node, wanted), indent, text);
                }
            }
        }
    }

    private Node firstKept(SequenceNode node, Entry.Items wanted) {
        return node.getValue().stream()
                .filter(n -> partner(node, n, wanted).isPresent())
                .findFirst()
                .orElseThrow();
    }

    /** What an item of the file becomes: the wanted item of its name, or of its place. */
    private Optional<Entry> partner(SequenceNode node, Node item, Entry.Items wanted) {
        var was = (Entry.Items) tree.entry(node);
        int at = node.getValue().indexOf(item);
        if (was.ids().isEmpty() || wanted.ids().isEmpty()) {
            return at < wanted.list().size() ? Optional.of(wanted.list().get(at)) : Optional.empty();
        }
        int wantedAt = wanted.ids().get().indexOf(was.ids().get().get(at));
        return wantedAt < 0 ? Optional.empty() : Optional.of(wanted.list().get(wantedAt));
    }

    private static Node key(NodeTuple entry) {
        return entry.getKeyNode();
    }

    private static String word(NodeTuple entry) {
        return RecordTree.text(entry.getKeyNode());
    }
}
