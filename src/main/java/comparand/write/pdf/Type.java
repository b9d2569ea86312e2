package comparand.write.pdf;

import java.awt.Color;

/** The sizes and inks of the text on a page and the room about it, in one place; compact where much must stand on few pages. */
final class Type {

    private final Fonts fonts;
    private final boolean compact;

    Type(Fonts fonts, boolean compact) {
        this.fonts = fonts;
        this.compact = compact;
    }

    Fonts fonts() {
        return fonts;
    }

    TextStyle title() {
        return compact ? strong(14, 16, TextStyle.INK) : strong(20, 25, TextStyle.INK);
    }

    TextStyle subtitle() {
        return compact ? regular(9.5f, 12, TextStyle.GREY) : regular(11.5f, 15, TextStyle.GREY);
    }

    TextStyle heading() {
        return compact ? strong(10, 12.5f, TextStyle.ACCENT) : strong(13, 17, TextStyle.ACCENT);
    }

    TextStyle subheading() {
        return compact ? strong(8, 10, TextStyle.INK) : strong(9.5f, 13, TextStyle.INK);
    }

    TextStyle body() {
        return compact ? regular(7.8f, 9.5f, TextStyle.INK) : regular(9, 12.5f, TextStyle.INK);
    }

    TextStyle small() {
        return compact ? regular(6.8f, 7.9f, TextStyle.GREY) : regular(8, 10.5f, TextStyle.GREY);
    }

    TextStyle cell() {
        return compact ? regular(7, 8.1f, TextStyle.INK) : regular(7.6f, 9.6f, TextStyle.INK);
    }

    TextStyle cellStrong() {
        return compact ? strong(7, 8.1f, TextStyle.INK) : strong(7.6f, 9.6f, TextStyle.INK);
    }

    TextStyle mark() {
        return regular(compact ? 5.4f : 5.8f, cell().leading(), TextStyle.INK);
    }

    TextStyle note() {
        return compact ? regular(6.8f, 8.2f, TextStyle.GREY) : regular(7.2f, 9.2f, TextStyle.GREY);
    }

    TextStyle foot() {
        return compact ? regular(7, 9, TextStyle.GREY) : regular(7.5f, 10, TextStyle.GREY);
    }

    TextStyle footStrong() {
        return compact ? strong(7, 9, TextStyle.INK) : strong(7.5f, 10, TextStyle.INK);
    }

    /** Above and below the text of a cell, and at its sides. */
    float cellPad() {
        return compact ? 1.6f : 3;
    }

    float belowTitle() {
        return compact ? 1 : 6;
    }

    float aboveHeading() {
        return compact ? 5 : 8;
    }

    float belowHeading() {
        return compact ? 1 : 2;
    }

    float aboveSubheading() {
        return compact ? 2 : 4;
    }

    float belowParagraph() {
        return compact ? 2 : 4;
    }

    float belowPoint() {
        return compact ? 1 : 2;
    }

    float aboveNotes() {
        return compact ? 2 : 4;
    }

    float belowTable() {
        return compact ? 3 : 8;
    }

    /** What must stand below the heading of a chapter on its page. */
    float fewestBelowHeading() {
        return compact ? 40 : 71;
    }

    private TextStyle regular(float size, float leading, Color ink) {
        return new TextStyle(fonts.regular(), size, leading, ink);
    }

    private TextStyle strong(float size, float leading, Color ink) {
        return new TextStyle(fonts.strong(), size, leading, ink);
    }
}
