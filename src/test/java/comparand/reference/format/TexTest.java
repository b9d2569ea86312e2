package comparand.reference.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Accents and letters of TeX: table 3.1 and 3.2 of Lamport's "LaTeX: A Document Preparation System" (from memory), in names people bear. */
class TexTest {

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            delimiter = ';',
            value = {
                "G{\\\"o}del;Gödel",
                "G\\\"odel;Gödel",
                "G\\\"{o}del;Gödel",
                "{\\'E}l\\`eve;Élève",
                "Fran\\c{c}ois;François",
                "Fran{\\c c}ois;François",
                "Erd\\H{o}s;Erdős",
                "Erd{\\H o}s;Erdős",
                "\\v{S}koda, Dvo\\v{r}\\'ak;Škoda, Dvořák",
                "{\\L}ukasiewicz, \\L ukasz;Łukasiewicz, Łukasz",
                "W{\\l}odek;Włodek",
                "S{\\o}ren \\O rsted;Søren Ørsted",
                "{\\AA}ngstr{\\\"o}m, \\aa;Ångström, å",
                "Stra{\\ss}e, Wei\\ss;Straße, Weiß",
                "Mart\\'{\\i}nez, na\\\"\\i ve;Martínez, naïve",
                "\\k{a}, \\u{g}, \\r{u}, \\.z, \\=a, \\d{s}, \\~n;ą, ğ, ů, ż, ā, ṣ, ñ",
                "{\\OE}uvre, \\ae, {\\TH}or, \\dj, \\ng;Œuvre, æ, Þor, đ, ŋ",
                "P{\\'{o}}lya;Pólya",
                "50\\% \\& \\$5 \\#1 \\_x \\{y\\};50% & $5 #1 _x {y}",
                "a~b--c---d ``q'';a b–c—d “q”",
                "$\\mathrm{H}_2\\mathrm{O}$ {\\em in vitro} \\emph{ex vivo} \\TeX;H2O in vitro ex vivo TeX",
                "37\\,\\textdegree{}C, $\\pm$ 2 $\\mu$m;37 °C, ± 2 μm",
                "An {$O(n \\log n / \\! \\log\\log n)$} Sorting;An O(n log n / log log n) Sorting"
            })
    void accentsAndCommandsBecomeSigns(String tex, String plain) {
        var unknown = new ArrayList<String>();

        assertThat(Tex.plain(tex, unknown::add)).isEqualTo(plain);
        assertThat(unknown).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"\\foo{x}, \\foox", "\\, ''", "{, ''", "$, ''", "\\\"{, ''", "\\textbf, ''"})
    void whatIsBrokenGivesTextAndNoFault(String tex, String plain) {
        var expected = tex.equals("\\") ? "\\" : plain;

        assertThat(Tex.plain(tex, command -> {})).isEqualTo(expected);
    }
}
