package comparand.write.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.snakeyaml.engine.v2.nodes.Node;

/** Pieces of a text that give way to others, none overlapping another; all places count code points of the old text. */
final class Changes {

    /** What stands from one place up to another gives way to other text. */
    private record Piece(int from, int to, String text) {}

    private final RecordTree tree;
    private final String lineEnd;
    private final List<Piece> pieces = new ArrayList<>();

    Changes(RecordTree tree) {
        this.tree = tree;
        this.lineEnd = hasCarriageReturns() ? "\r\n" : "\n";
    }

    /** The column a node begins in, from 0. */
    int columnOf(Node node) {
        int start = RecordTree.start(node);
        return start - lineStart(start);
    }

    /** Whether something else, such as the dash of its list, stands before it on its line. */
    boolean sharesItsLine(Node node) {
        int start = RecordTree.start(node);
        for (int i = lineStart(start); i < start; i++) {
            if (tree.sign(i) != ' ') {
                return true;
            }
        }
        return false;
    }

    void replace(Node node, String text) {
        pieces.add(new Piece(RecordTree.start(node), tree.end(node), text));
    }

    /** Everything behind the colon of a key up to the end of its value. */
    void replaceBehindColon(Node key, Node value, String text) {
        int colon = tree.end(key);
        while (tree.sign(colon) != ':') {
            colon++;
        }
        pieces.add(new Piece(colon + 1, Math.max(colon + 1, tree.end(value)), text));
    }

    /** The lines from the first node to the end of the last, each whole. */
    void removeLines(Node first, Node last) {
        pieces.add(
                new Piece(lineStart(RecordTree.start(first)), nextLine(Math.max(tree.end(first), tree.end(last))), ""));
    }

    /** From the start of one node up to the start of the next, which takes its place. */
    void removeUpTo(Node first, Node next) {
        pieces.add(new Piece(RecordTree.start(first), RecordTree.start(next), ""));
    }

    /** A line of its own below the line on which the last of the nodes ends. */
    void insertBelow(Node value, Node key, int indent, String text) {
        int at = lineThatStays(lineEnd(Math.max(tree.end(value), tree.end(key))));
        pieces.add(new Piece(at, at, "\n" + " ".repeat(indent) + text));
    }

    /** Before a key, which moves to a line of its own below. */
    void insertAbove(Node key, int indent, String text) {
        int at = RecordTree.start(key);
        pieces.add(new Piece(at, at, text + "\n" + " ".repeat(indent)));
    }

    /** Before the dash of an item. */
    void insertAboveItem(Node item, int indent, String text) {
        int at = lineStart(RecordTree.start(item)) + indent;
        pieces.add(new Piece(at, at, text + "\n" + " ".repeat(indent)));
    }

    /** The text with all changes in it. */
    String applied() {
        // a sort that is stable: what was inserted at one place stays in its order
        pieces.sort(Comparator.comparingInt(Piece::from).thenComparingInt(Piece::to));
        var out = new StringBuilder();
        int at = 0;
        for (var piece : pieces) {
            if (piece.from < at) {
                throw new IllegalStateException("two changes of one place");
            }
            append(out, at, piece.from);
            out.append(piece.text.replace("\n", lineEnd));
            at = piece.to;
        }
        append(out, at, tree.length());
        return out.toString();
    }

    private void append(StringBuilder out, int from, int to) {
        for (int i = from; i < to; i++) {
            out.appendCodePoint(tree.sign(i));
        }
    }

    private boolean hasCarriageReturns() {
        int end = lineEnd(0);
        return end < tree.length() && tree.sign(end) == '\r';
    }

    private int lineStart(int at) {
        int i = at;
        while (i > 0 && tree.sign(i - 1) != '\n') {
            i--;
        }
        return i;
    }

    /** The place of the line end, or the end of the text. */
    private int lineEnd(int at) {
        int i = at;
        while (i < tree.length()
                && tree.sign(i) != '\n'
                && !(tree.sign(i) == '\r' && i + 1 < tree.length() && tree.sign(i + 1) == '\n')) {
            i++;
        }
        return i;
    }

    /** The same line end, or that of the nearest line above which is not taken out. */
    private int lineThatStays(int end) {
        int at = end;
        for (int i = pieces.size() - 1; i >= 0; i--) {
            var piece = pieces.get(i);
            if (piece.text.isEmpty() && piece.from <= at && at < piece.to && piece.from > 0) {
                at = lineEnd(lineStart(piece.from - 1));
                i = pieces.size();
            }
        }
        return at;
    }

    private int nextLine(int at) {
        int i = at;
        while (i < tree.length() && tree.sign(i) != '\n') {
            i++;
        }
        return Math.min(i + 1, tree.length());
    }
}
