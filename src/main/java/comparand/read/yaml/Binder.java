package comparand.read.yaml;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.model.library.Entries;
import comparand.model.library.OneOrMore;
import comparand.unit.DecimalSign;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Binds the tree of a file to a record type, collecting every fault on the way. Nothing is bound unless all of it is.
 */
public final class Binder {

    /** What is left of "3,8 mmHg" behind its comma. */
    private static final Pattern DECIMAL = Pattern.compile("\\d+( .*)?");

    private final FileFindings findings;
    private final DecimalSign decimal;

    private Binder(FileFindings findings, DecimalSign decimal) {
        this.findings = findings;
        this.decimal = decimal;
    }

    /** The record a file holds; empty when a STOP was added to the findings. */
    public static <T extends Record> Optional<T> read(
            String file, byte[] bytes, Class<T> type, List<Diagnostic> findings) {
        return YamlTree.read(file, bytes, findings).flatMap(tree -> {
            var binder = new Binder(new FileFindings(findings), declaredSign(tree));
            try {
                return binder.fields(Shape.of(type), tree, Where.record(singular(type)))
                        .map(type::cast);
            } catch (FileFindings.Enough e) {
                return Optional.empty();
            }
        });
    }

    /** The decimal sign a file declares; a misspelt declaration is reported when its key is bound. */
    private static DecimalSign declaredSign(Node.Mapping tree) {
        return tree.entry("decimal")
                .map(Node.Entry::value)
                .filter(v -> v instanceof Node.Scalar s && s.text().equals("comma"))
                .map(v -> DecimalSign.COMMA)
                .orElse(DecimalSign.POINT);
    }

    private static String singular(Class<?> type) {
        return type.getSimpleName()
                .replaceAll("Record$", "")
                .replaceAll("(?<=[a-z])([A-Z])", " $1")
                .toLowerCase(Locale.ROOT);
    }

    private Optional<Object> value(Shape shape, Node node, Where where) {
        if (shape instanceof Shape.Maybe maybe) {
            return value(maybe.value(), node, where).map(Optional::of);
        }
        if (shape instanceof Shape.Single single) {
            return single(single.type(), node, where);
        }
        if (shape instanceof Shape.Many many) {
            return many(many, node, where);
        }
        if (shape instanceof Shape.AloneOrMany either) {
            var items = node instanceof Node.Sequence list ? list.items() : List.of(node);
            return items(either.item(), items, node, 1, where).map(OneOrMore::new);
        }
        if (shape instanceof Shape.Open open) {
            return open(open, node, where);
        }
        return fields((Shape.Fields) shape, node, where);
    }

    private Optional<Object> single(ScalarType<?> type, Node node, Where where) {
        if (!(node instanceof Node.Scalar scalar)) {
            wrongKind(node, type.name(), where, type.example());
            return Optional.empty();
        }
        if (scalar.isEmpty() || scalar.text().isBlank()) {
            findings.add(Diagnostic.stop(
                    "value-empty",
                    node.span(),
                    "`%s` is left empty".formatted(where.name()),
                    "an empty place says neither that a value was found nor that it was looked for",
                    "write %s, such as `%s`%s"
                            .formatted(
                                    type.name(),
                                    type.example(),
                                    where.mayBeLeftOut() ? ", or leave the key out" : "")));
            return Optional.empty();
        }
        return type.reader()
                .apply(scalar.text(), decimal)
                .<Optional<Object>>fold(v -> Optional.of(new Located<Object>(v, scalar.span())), fault -> {
                    findings.add(Diagnostic.stop(
                            "value-unreadable",
                            scalar.part(fault.at(), fault.length()),
                            fault.problem(),
                            "`%s` has to be %s".formatted(where.name(), type.name()),
                            fault.fix()));
                    return Optional.empty();
                });
    }

    private Optional<Object> many(Shape.Many many, Node node, Where where) {
        if (!(node instanceof Node.Sequence list)) {
            wrongKind(node, "a list", where, "[...]");
            return Optional.empty();
        }
        return items(many.item(), list.items(), node, many.atLeast(), where).map(l -> (Object) l);
    }

    private Optional<List<Object>> items(Shape item, List<Node> nodes, Node whole, int atLeast, Where where) {
        if (nodes.size() < atLeast) {
            findings.add(Diagnostic.stop(
                    "list-too-short",
                    whole.span(),
                    "`%s` has %d entries and needs at least %d".formatted(where.name(), nodes.size(), atLeast),
                    "without them there is nothing to work on",
                    "add an entry"));
            return Optional.empty();
        }
        var bound = new ArrayList<Object>(nodes.size());
        for (var node : nodes) {
            value(item, node, where.entry()).ifPresent(bound::add);
        }
        return bound.size() == nodes.size() ? Optional.of(List.copyOf(bound)) : Optional.empty();
    }

    private Optional<Object> open(Shape.Open open, Node node, Where where) {
        if (!(node instanceof Node.Mapping mapping)) {
            wrongKind(node, "keys with values", where, "{key: value}");
            return Optional.empty();
        }
        var bound = new ArrayList<Entries.Entry<Object>>();
        boolean whole = true;
        for (var entry : mapping.entries()) {
            var v = value(open.value(), entry.value(), Where.key(entry.key().text(), false));
            whole &= v.isPresent();
            v.ifPresent(x -> bound.add(new Entries.Entry<>(
                    new Located<>(entry.key().text(), entry.key().span()), x)));
        }
        return whole ? Optional.of(new Entries<>(bound)) : Optional.empty();
    }

    private Optional<Object> fields(Shape.Fields shape, Node node, Where where) {
        if (!(node instanceof Node.Mapping mapping)) {
            wrongKind(
                    node,
                    "keys with values: " + String.join(", ", shape.keys()),
                    where,
                    "{" + shape.firstKey() + ": ...}");
            return Optional.empty();
        }
        boolean known = noUnknownKeys(shape, mapping, where);
        boolean whole = oneOfThem(shape, mapping, where) && known;
        var arguments = new ArrayList<Object>();
        for (var field : shape.fields()) {
            var argument = field(field, mapping, where);
            whole &= argument.isPresent();
            argument.ifPresent(arguments::add);
        }
        return whole ? Optional.of(construct(shape, arguments)) : Optional.empty();
    }

    private Optional<Object> field(Shape.Field field, Node.Mapping mapping, Where where) {
        var entry = mapping.entry(field.key());
        if (entry.isPresent()) {
            return value(field.shape(), entry.get().value(), Where.key(field.key(), !field.required()));
        }
        if (field.required()) {
            findings.add(Diagnostic.stop(
                    "key-missing",
                    mapping.span(),
                    "`%s` is missing from %s".formatted(field.key(), where.phrase()),
                    "it says: " + lowerFirst(field.meaning()),
                    "add `%s: %s`".formatted(field.key(), example(field.shape()))));
            return Optional.empty();
        }
        return Optional.of(absent(field.shape()));
    }

    private static Object absent(Shape shape) {
        if (shape instanceof Shape.Maybe) {
            return Optional.empty();
        }
        return shape instanceof Shape.Open ? Entries.none() : List.of();
    }

    private static String example(Shape shape) {
        if (shape instanceof Shape.Single single) {
            return single.type().words().isEmpty()
                    ? single.type().example()
                    : String.join(" | ", single.type().words());
        }
        return shape instanceof Shape.Fields fields ? "{" + fields.firstKey() + ": ...}" : "[...]";
    }

    private boolean noUnknownKeys(Shape.Fields shape, Node.Mapping mapping, Where where) {
        boolean known = true;
        for (var entry : mapping.entries()) {
            if (!shape.keys().contains(entry.key().text())) {
                known = false;
                findings.add(Diagnostic.stop(
                        "key-unknown",
                        entry.key().span(),
                        "`%s` is not a key of %s".formatted(entry.key().text(), where.phrase()),
                        "a key nobody reads would be lost without a word",
                        DECIMAL.matcher(entry.key().text()).matches()
                                ? "a comma between braces separates keys: put quotes around a number with a decimal comma"
                                : Suggest.instruction(entry.key().text(), shape.keys())));
            }
        }
        return known;
    }

    private boolean oneOfThem(Shape.Fields shape, Node.Mapping mapping, Where where) {
        if (shape.exactlyOne().isEmpty()) {
            return true;
        }
        var present = shape.exactlyOne().stream()
                .filter(k -> mapping.entry(k).isPresent())
                .toList();
        if (present.size() == 1) {
            return true;
        }
        var span = present.isEmpty()
                ? mapping.span()
                : mapping.entry(present.get(1)).orElseThrow().key().span();
        findings.add(Diagnostic.stop(
                present.isEmpty() ? "key-missing" : "keys-exclude-each-other",
                span,
                present.isEmpty()
                        ? "%s has none of: %s".formatted(where.phrase(), String.join(", ", shape.exactlyOne()))
                        : "`%s` and `%s` exclude each other".formatted(present.get(0), present.get(1)),
                "exactly one of them says what kind of entry this is",
                present.isEmpty() ? "add one of them" : "keep the one that the source states"));
        return false;
    }

    private void wrongKind(Node node, String wanted, Where where, String example) {
        findings.add(Diagnostic.stop(
                node instanceof Node.Scalar s && s.isEmpty() ? "value-empty" : "value-of-wrong-kind",
                node.span(),
                "`%s` has to be %s, and this is %s".formatted(where.name(), wanted, node.kind()),
                "read otherwise than meant, it would change the record without a word",
                "write `%s: %s`".formatted(where.name(), example)));
    }

    private static Object construct(Shape.Fields shape, List<Object> arguments) {
        try {
            return shape.constructor().newInstance(arguments.toArray());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot build " + shape.type().getSimpleName(), e);
        }
    }

    private static String lowerFirst(String text) {
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }
}
