package comparand.write.pptx;

import comparand.document.Look;
import comparand.document.talk.layout.Box;
import comparand.document.talk.layout.Stage;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.sl.usermodel.PaintStyle;
import org.apache.poi.sl.usermodel.Placeholder;
import org.apache.poi.xslf.usermodel.SlideLayout;
import org.apache.poi.xslf.usermodel.XMLSlideShow;
import org.apache.poi.xslf.usermodel.XSLFRelation;
import org.apache.poi.xslf.usermodel.XSLFSlideLayout;
import org.apache.poi.xslf.usermodel.XSLFTextRun;
import org.apache.poi.xslf.usermodel.XSLFTextShape;

/** An empty presentation to fill: that of a house without its slides, or the tool's own. */
final class House {

    private static final Set<Placeholder> FOOT =
            Set.of(Placeholder.DATETIME, Placeholder.FOOTER, Placeholder.SLIDE_NUMBER);

    private static final double FOOT_HEIGHT = 54;
    private static final double LEAST_BODY = 300;
    private static final double LEAST_WIDTH = 640;
    private static final double PLAIN_TITLE = 30;

    /** Why a presentation cannot be taken over. */
    enum Unfit {
        /** It is no presentation, or is broken. */
        UNREADABLE,
        /** Its slides are not 13.33 by 7.5 inches. */
        NOT_WIDE,
        /** None of its layouts has a place for a title. */
        NO_TITLE,
        /** Title and foot leave no room between them. */
        NO_ROOM
    }

    private House() {}

    /** Without slides, its layouts as they are. */
    static XMLSlideShow open(Look look) throws IOException {
        var bytes = look.slides().isPresent() ? look.slides().orElseThrow().bytes() : PlainSlides.bytes();
        var show = new XMLSlideShow(new ByteArrayInputStream(bytes));
        // a template is written as a presentation: office programs go by the type within, not by the ending
        try {
            show.getPackage()
                    .replaceContentType(
                            XSLFRelation.PRESENTATIONML_TEMPLATE.getContentType(), XSLFRelation.MAIN.getContentType());
        } catch (RuntimeException e) {
            show.close();
            throw e;
        }
        for (int i = show.getSlides().size() - 1; i >= 0; i--) {
            show.removeSlide(i);
        }
        return show;
    }

    /** The layout with a title and the least beside it; the one named title only before all others. */
    static Optional<XSLFSlideLayout> layout(XMLSlideShow show) {
        return show.getSlideMasters().stream()
                .flatMap(m -> List.of(m.getSlideLayouts()).stream())
                .filter(l -> title(l).isPresent())
                .min(Comparator.comparing((XSLFSlideLayout l) -> l.getType() != SlideLayout.TITLE_ONLY)
                        .thenComparing(l -> l.getPlaceholders().length));
    }

    static Optional<XSLFTextShape> title(XSLFSlideLayout layout) {
        return List.of(layout.getPlaceholders()).stream()
                .filter(p -> p.getTextType() == Placeholder.TITLE || p.getTextType() == Placeholder.CENTERED_TITLE)
                .findFirst();
    }

    /** Why a look's presentation cannot be used; empty if it can. */
    static Optional<Unfit> unfit(Look look) {
        try (var show = open(look)) {
            var size = show.getPageSize();
            if (size.width != (int) Stage.WIDTH || size.height != (int) Stage.HEIGHT) {
                return Optional.of(Unfit.NOT_WIDE);
            }
            if (layout(show).isEmpty()) {
                return Optional.of(Unfit.NO_TITLE);
            }
            var body = stage(show, look).body();
            return body.height() < LEAST_BODY || body.width() < LEAST_WIDTH
                    ? Optional.of(Unfit.NO_ROOM)
                    : Optional.empty();
        } catch (IOException | POIXMLException | OpenXML4JRuntimeException | IllegalArgumentException e) {
            return Optional.of(Unfit.UNREADABLE);
        }
    }

    /** What its masters leave, and the colours and sizes they ask for. */
    static Stage stage(Look look) throws IOException {
        if (look.slides().isEmpty()) {
            return Stage.plain(look.face());
        }
        try (var show = open(look)) {
            return stage(show, look);
        }
    }

    private static Stage stage(XMLSlideShow show, Look look) {
        var plain = Stage.plain(look.face());
        if (look.slides().isEmpty()) {
            return plain;
        }
        var layout = layout(show).orElseThrow();
        var slide = show.createSlide(layout);
        var title = slide.getPlaceholders()[0];
        title.setText("T");
        var titleRun = title.getTextParagraphs().get(0).getTextRuns().get(0);
        var box = slide.createTextBox();
        box.setText("T");
        var run = box.getTextParagraphs().get(0).getTextRuns().get(0);
        var place = box(title.getAnchor());
        double footEnd = List.of(layout.getPlaceholders()).stream()
                .filter(p -> FOOT.contains(p.getTextType()))
                .mapToDouble(p -> p.getAnchor().getMaxY())
                .max()
                .orElse(plain.foot().bottom());
        var foot =
                new Box(place.x(), Math.min(footEnd, plain.foot().bottom()) - FOOT_HEIGHT, place.width(), FOOT_HEIGHT);
        double top = place.bottom() + 12;
        var size = titleRun.getFontSize();
        return new Stage(
                place,
                size == null ? PLAIN_TITLE : size,
                new Box(place.x(), top, place.width(), Math.max(1, foot.y() - 8 - top)),
                foot,
                Optional.ofNullable(run.getFontFamily()).orElse(look.face()),
                Optional.ofNullable(slide.getBackground().getFillColor())
                        .map(House::rgb)
                        .orElse(plain.paper()),
                colour(run).orElse(plain.ink()),
                colour(titleRun).orElse(plain.titleInk()),
                false);
    }

    private static Box box(Rectangle2D anchor) {
        return new Box(anchor.getX(), anchor.getY(), anchor.getWidth(), anchor.getHeight());
    }

    private static Optional<Integer> colour(XSLFTextRun run) {
        return run.getFontColor() instanceof PaintStyle.SolidPaint solid
                ? Optional.ofNullable(solid.getSolidColor().getColor()).map(House::rgb)
                : Optional.empty();
    }

    private static int rgb(Color colour) {
        return colour.getRGB() & 0xFFFFFF;
    }
}
