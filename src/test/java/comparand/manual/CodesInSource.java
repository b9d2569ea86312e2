package comparand.manual;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.ReturnTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import javax.lang.model.element.Modifier;
import javax.tools.ToolProvider;

/**
 * The names of all findings, read off the source: every text that is given for a parameter called {@code code}, or that a method
 * called {@code code} gives back. What stands there and is neither a text nor handed on under that name is told as not understood,
 * so that no way of making a finding escapes.
 */
final class CodesInSource {

    private static final Path SOURCES = Path.of("src/main/java/comparand");

    /** Where {@code code} is the code of a unit, of a field, or no name at all. */
    private static final Set<String> OTHER =
            Set.of("unit", "write", "document", "stat", "metric", "manual", "diag", "cite");

    /** A visitor gives back something, and nobody asks for it. */
    private static final Object DONE = "";

    private final SortedSet<String> codes = new TreeSet<>();
    private final SortedSet<String> notUnderstood = new TreeSet<>();
    /** Where the code stands among the arguments, by the name of the method or type and their number; of private ones with the file. */
    private final Map<String, Integer> places = new HashMap<>();

    private CodesInSource() {
        places.put("Diagnostic.stop/5", 0);
        places.put("Diagnostic.hold/5", 0);
        places.put("Diagnostic.note/5", 0);
        places.put("Diagnostic/6", 1);
    }

    static CodesInSource read() throws IOException {
        var these = new CodesInSource();
        var units = parsed();
        units.forEach(u -> u.accept(these.new Declared(), null));
        units.forEach(u -> u.accept(these.new Given(), null));
        return these;
    }

    SortedSet<String> codes() {
        return codes;
    }

    SortedSet<String> notUnderstood() {
        return notUnderstood;
    }

    private static List<CompilationUnitTree> parsed() throws IOException {
        var compiler = ToolProvider.getSystemJavaCompiler();
        try (var files = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8);
                var sources = Files.walk(SOURCES)) {
            var paths = sources.filter(f -> f.toString().endsWith(".java"))
                    .filter(f ->
                            !OTHER.contains(SOURCES.relativize(f).getName(0).toString()))
                    .toList();
            var task = (JavacTask) compiler.getTask(
                    null, files, d -> {}, List.of("-proc:none"), null, files.getJavaFileObjectsFromPaths(paths));
            var units = new ArrayList<CompilationUnitTree>();
            task.parse().forEach(units::add);
            return units;
        }
    }

    private static boolean isCode(VariableTree variable) {
        return variable.getName().contentEquals("code")
                && variable.getType() != null
                && variable.getType().toString().equals("String");
    }

    /** Methods, constructors and records that take a code. */
    private final class Declared extends TreeScanner<Object, Object> {

        private String type = "";
        private String file = "";

        @Override
        public Object visitCompilationUnit(CompilationUnitTree node, Object nothing) {
            file = node.getSourceFile().getName();
            return super.visitCompilationUnit(node, nothing);
        }

        @Override
        public Object visitClass(ClassTree node, Object nothing) {
            var outer = type;
            type = node.getSimpleName().toString();
            if (node.getKind() == Tree.Kind.RECORD) {
                var components = node.getMembers().stream()
                        .filter(m -> m instanceof VariableTree v
                                && !v.getModifiers().getFlags().contains(Modifier.STATIC))
                        .map(VariableTree.class::cast)
                        .toList();
                taken(type, components, "");
            }
            super.visitClass(node, nothing);
            type = outer;
            return DONE;
        }

        @Override
        public Object visitMethod(MethodTree node, Object nothing) {
            boolean isMine = node.getModifiers().getFlags().contains(Modifier.PRIVATE);
            taken(
                    node.getName().contentEquals("<init>")
                            ? type
                            : node.getName().toString(),
                    node.getParameters(),
                    isMine ? file + "#" : "");
            return super.visitMethod(node, nothing);
        }

        private void taken(String name, List<? extends VariableTree> parameters, String before) {
            for (int i = 0; i < parameters.size(); i++) {
                if (isCode(parameters.get(i))) {
                    places.put(before + name + "/" + parameters.size(), i);
                }
            }
        }
    }

    /** What is given for a code. */
    private final class Given extends TreeScanner<Object, Object> {

        private final Map<String, ExpressionTree> constants = new HashMap<>();
        private String file = "";

        @Override
        public Object visitCompilationUnit(CompilationUnitTree node, Object nothing) {
            file = node.getSourceFile().getName();
            return super.visitCompilationUnit(node, nothing);
        }

        @Override
        public Object visitClass(ClassTree node, Object nothing) {
            node.getMembers().stream()
                    .filter(VariableTree.class::isInstance)
                    .map(VariableTree.class::cast)
                    .filter(v -> v.getInitializer() != null)
                    .forEach(v -> constants.put(v.getName().toString(), v.getInitializer()));
            return super.visitClass(node, nothing);
        }

        @Override
        public Object visitMethod(MethodTree node, Object nothing) {
            if (node.getName().contentEquals("code") && node.getBody() != null) {
                node.getBody().accept(new Returned(), null);
            }
            return super.visitMethod(node, nothing);
        }

        @Override
        public Object visitMethodInvocation(MethodInvocationTree node, Object nothing) {
            var select = node.getMethodSelect();
            var name = select instanceof MemberSelectTree m ? m.getIdentifier().toString() : select.toString();
            int n = node.getArguments().size();
            var place = places.get(select + "/" + n);
            if (place == null) {
                place = places.get(file + "#" + name + "/" + n);
            }
            // a fault of a text that was read says where in the text, and has no name
            if (place == null && !select.toString().startsWith("Parsed.")) {
                place = places.get(name + "/" + n);
            }
            if (place != null) {
                given(node.getArguments().get(place));
            }
            return super.visitMethodInvocation(node, nothing);
        }

        @Override
        public Object visitNewClass(NewClassTree node, Object nothing) {
            var place =
                    places.get(node.getIdentifier() + "/" + node.getArguments().size());
            if (place != null) {
                given(node.getArguments().get(place));
            }
            return super.visitNewClass(node, nothing);
        }

        private void given(ExpressionTree expression) {
            if (expression instanceof LiteralTree literal && literal.getValue() instanceof String text) {
                codes.add(text);
            } else if (expression instanceof ConditionalExpressionTree either) {
                given(either.getTrueExpression());
                given(either.getFalseExpression());
            } else if (expression instanceof ParenthesizedTree inner) {
                given(inner.getExpression());
            } else if (expression instanceof IdentifierTree name && constants.containsKey(name.toString())) {
                given(constants.get(name.toString()));
            } else if (!isHandedOn(expression)) {
                notUnderstood.add(file + ": " + expression);
            }
        }

        private boolean isHandedOn(ExpressionTree expression) {
            var text = expression.toString();
            return text.equals("code") || text.endsWith(".code") || text.endsWith("code()") || text.startsWith("code(");
        }

        /** Texts that a method called code gives back. */
        private final class Returned extends TreeScanner<Object, Object> {
            @Override
            public Object visitReturn(ReturnTree node, Object nothing) {
                node.getExpression().accept(new Texts(), null);
                return DONE;
            }
        }
    }

    private final class Texts extends TreeScanner<Object, Object> {
        @Override
        public Object visitLiteral(LiteralTree node, Object nothing) {
            if (node.getValue() instanceof String text) {
                codes.add(text);
            }
            return DONE;
        }
    }
}
