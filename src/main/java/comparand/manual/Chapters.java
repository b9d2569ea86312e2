package comparand.manual;

import comparand.manual.example.Story;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * Chapters that a person wrote, in Markdown. Each is a story: blocks of records are written into a library of its own, lines
 * that begin with {@code comparand} are run in it, and what they print is set below them.
 */
final class Chapters {

    /** In reading order; the first few lead into the manual, the others say how to add something. */
    static final List<String> FILES = List.of(
            "reading-a-report.md",
            "from-print-to-table.md",
            "files-of-an-output.md",
            "cautions.md",
            "add-a-metric.md",
            "add-a-condition.md",
            "add-raw-data.md",
            "add-a-rule.md",
            "add-a-unit.md",
            "add-a-language.md",
            "add-a-format.md",
            "add-a-writer.md");

    static final String HOW_TO = "how-to/index.html";

    private Chapters() {}

    /** What is told before the reference. */
    static List<Page> leading(Story.Teller teller) {
        return FILES.stream()
                .filter(f -> !f.startsWith("add-"))
                .map(f -> page(f, "", teller))
                .toList();
    }

    /** How something is added, under a page that lists it. */
    static List<Page> howTo(Story.Teller teller) {
        var pages = new ArrayList<Page>();
        FILES.stream().filter(f -> f.startsWith("add-")).forEach(f -> pages.add(page(f, HOW_TO, teller)));
        var out = new Html();
        out.items(pages.stream()
                .map(p -> Html.link(p.path().substring("how-to/".length()), p.title()) + "<br>" + Html.said(p.lead()))
                .toList());
        pages.add(
                0,
                new Page(
                        HOW_TO,
                        HOW_TO,
                        "How to add",
                        "A metric, a condition, raw data, a rule, a unit, a language, a format: worked through.",
                        out.toString(),
                        List.of()));
        return pages;
    }

    private static Page page(String file, String chapter, Story.Teller teller) {
        var parser =
                Parser.builder().extensions(List.of(TablesExtension.create())).build();
        var document = parser.parse(Resources.text("chapters/" + file));
        var story = teller.story();
        var title = document.getFirstChild();
        var lead = title == null ? null : title.getNext();
        if (!(title instanceof Heading) || lead == null) {
            throw new IllegalStateException(file + " begins with a heading and a paragraph");
        }
        var terms = new ArrayList<Page.Term>();
        terms.add(new Page.Term(plain(title), ""));
        title.unlink();
        lead.unlink();
        document.accept(new AbstractVisitor() {
            @Override
            public void visit(Heading heading) {
                terms.add(new Page.Term(plain(heading), Html.anchor(plain(heading))));
            }
        });
        var renderer = HtmlRenderer.builder()
                .extensions(List.of(TablesExtension.create()))
                .nodeRendererFactory(context -> new Blocks(context, story))
                .attributeProviderFactory(c -> (node, tag, attributes) -> {
                    if (node instanceof Heading h) {
                        attributes.put("id", Html.anchor(plain(h)));
                    }
                    if (node instanceof TableCell cell && cell.isHeader()) {
                        attributes.put("scope", "col");
                    }
                })
                .escapeHtml(true)
                .build();
        var path = (chapter.isEmpty() ? "" : "how-to/") + file.replace(".md", ".html");
        return new Page(
                path, chapter.isEmpty() ? path : chapter, plain(title), plain(lead), renderer.render(document), terms);
    }

    private static String plain(Node node) {
        var out = new StringBuilder();
        node.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                out.append(text.getLiteral());
            }

            @Override
            public void visit(org.commonmark.node.Code code) {
                out.append('`').append(code.getLiteral()).append('`');
            }

            @Override
            public void visit(org.commonmark.node.SoftLineBreak line) {
                out.append(' ');
            }
        });
        return out.toString();
    }

    /** Fenced blocks: what is written is shown with its file, what is run with what it printed. */
    private record Blocks(HtmlNodeRendererContext context, Story story) implements NodeRenderer {

        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
            return Set.of(FencedCodeBlock.class);
        }

        @Override
        public void render(Node node) {
            var block = (FencedCodeBlock) node;
            var told = story.tell(block.getInfo() == null ? "" : block.getInfo(), block.getLiteral());
            var writer = context.getWriter();
            writer.line();
            if (!told.file().isEmpty()) {
                writer.tag("p", Map.of("class", "file"));
                writer.text(told.file());
                writer.tag("/p");
                writer.line();
            }
            // in one order, whatever the hash of the day
            writer.tag("pre", new TreeMap<>(Map.of("tabindex", "0", "class", told.isRun() ? "said" : "written")));
            writer.tag("code");
            writer.text(told.text().stripTrailing());
            writer.tag("/code");
            writer.tag("/pre");
            writer.line();
        }
    }
}
