package comparand.write.pdf;

import java.awt.Color;

/** The sizes and inks of the text on a page, in one place. */
final class Type {

    private final Fonts fonts;

    Type(Fonts fonts) {
        this.fonts = fonts;
    }

    TextStyle title() {
        return strong(20, 25, TextStyle.INK);
    }

    TextStyle subtitle() {
        return regular(11.5f, 15, TextStyle.GREY);
    }

    TextStyle heading() {
        return strong(13, 17, TextStyle.ACCENT);
    }

    TextStyle subheading() {
        return strong(9.5f, 13, TextStyle.INK);
    }

    TextStyle body() {
        return regular(9, 12.5f, TextStyle.INK);
    }

    TextStyle small() {
        return regular(8, 10.5f, TextStyle.GREY);
    }

    TextStyle cell() {
        return regular(7.6f, 9.6f, TextStyle.INK);
    }

    TextStyle cellStrong() {
        return strong(7.6f, 9.6f, TextStyle.INK);
    }

    TextStyle mark() {
        return regular(5.8f, 9.6f, TextStyle.INK);
    }

    TextStyle note() {
        return regular(7.2f, 9.2f, TextStyle.GREY);
    }

    TextStyle foot() {
        return regular(7.5f, 10, TextStyle.GREY);
    }

    TextStyle footStrong() {
        return strong(7.5f, 10, TextStyle.INK);
    }

    private TextStyle regular(float size, float leading, Color ink) {
        return new TextStyle(fonts.regular(), size, leading, ink);
    }

    private TextStyle strong(float size, float leading, Color ink) {
        return new TextStyle(fonts.strong(), size, leading, ink);
    }
}
