package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.support.Built;
import comparand.support.NumberTokens;
import comparand.support.NumberTokens.Token;
import comparand.support.PrintedPlaces;
import comparand.support.PrintedPlaces.Place;
import comparand.support.TracedNumbers;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every number of the workbook and of the PDF comes from results.json. A row is held against the values it names, a chapter
 * against its metric, and only what names neither against its part of the file.
 */
class NumbersAreTracedTest {

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    /** What need not stand in results.json, by name and reason. */
    private enum Exempt {
        PAGE("page 3 of 11 counts the paper, not the evidence", "foot", "\\d+ / \\d+"),
        EXAMPLE(
                "the key shows a locator by example: 4:T2r3 is source 4, Table 2, row 3",
                "key",
                "4:T2r3|Source 4, Table 2, row 3"),
        ORDINAL("the place of a step in its trail", "step", "\\d+");

        private final String reason;
        private final String kind;
        private final String what;

        Exempt(String reason, String kind, String what) {
            this.reason = reason;
            this.kind = kind;
            this.what = what;
        }

        static String without(Place place) {
            var text = place.text();
            for (var rule : values()) {
                if (rule.kind.equals(place.kind())) {
                    text = text.replaceAll("(?<![\\w.])(?:" + rule.what + ")(?![\\w.])", " ");
                }
            }
            return text;
        }

        @Override
        public String toString() {
            return name() + ": " + reason;
        }
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every number printed in the workbook and in the PDF stands in results.json, or rounds from one there")
    void everyPrintedNumber(Built built) {
        var places = PrintedPlaces.of(built);

        assertThat(places.stream().flatMap(p -> NumberTokens.of(p.text()).stream()))
                .hasSizeGreaterThan(300);
        assertThat(places.stream().flatMap(NumbersAreTracedTest::untraced)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every number a cell of the workbook holds is one of the unrounded numbers of results.json")
    void everyNumberHeld(Built built) {
        var held = PrintedPlaces.of(built).stream()
                .filter(p -> p.number().isPresent() && !p.kind().equals("step"))
                .toList();

        assertThat(held).hasSizeGreaterThan(50);
        assertThat(held)
                .allSatisfy(p -> assertThat(p.from().has(p.number().getAsDouble()))
                        .as("%s: %s", p.where(), p.number())
                        .isTrue());
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("each exemption is needed: without it a number would be missing")
    void everyExemptionIsNeeded(Built built) {
        var places = PrintedPlaces.of(built);

        assertThat(Exempt.values())
                .allSatisfy(rule -> assertThat(places.stream()
                                .filter(p ->
                                        rule.kind.equals(p.kind()) && p.text().matches(".*" + rule.what + ".*")))
                        .as(rule.toString())
                        .isNotEmpty());
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("a measured number that is changed in its last digit is missed: the search is no sieve with holes")
    void aChangedNumberIsMissed(Built built) {
        var changes = PrintedPlaces.of(built).stream()
                .flatMap(p -> NumberTokens.of(Exempt.without(p)).stream()
                        .filter(t -> t.kind() == NumberTokens.Kind.NUMBER && (t.decimals() > 0 || t.significant() > 2))
                        .map(t -> new Change(p, t)))
                .toList();
        long missed = changes.stream().filter(Change::isMissed).count();

        assertThat(changes).hasSizeGreaterThan(300);
        assertThat((double) missed / changes.size()).isGreaterThan(0.9);
    }

    @Test
    @DisplayName("a planted number is found missing, and with its sign, its decimals and its power of ten")
    void aPlantedNumber() throws Exception {
        var from = new TracedNumbers(List.of(new ObjectMapper()
                .readTree("{\"a\": 72.4312, \"b\": -8.46, \"c\": \"38 mL\", \"d\": 0.0664, \"e\": 0.0000123}")));

        assertThat(from.untraced("72.4 mmHg, 72.43, −8.5, 38 mL, up to 6.6 %, 1.2 × 10⁻⁵"))
                .isEmpty();
        assertThat(from.untraced("72.5 mmHg")).containsExactly("72.5");
        assertThat(from.untraced("72.40")).containsExactly("72.40");
        assertThat(from.untraced("8.5 lower")).containsExactly("8.5");
        assertThat(from.untraced("+8.5")).containsExactly("+8.5");
        assertThat(from.untraced("39 mL")).containsExactly("39");
        assertThat(from.untraced("up to 6.7 %")).containsExactly("6.7");
        assertThat(from.untraced("1.2 × 10⁻⁴")).containsExactly("1.2×10⁻⁴");
        assertThat(from.untraced("3 to 38")).containsExactly("3");
        assertThat(from.untraced("B21")).containsExactly("B21");
        assertThat(from.has(72.4312)).isTrue();
        assertThat(from.has(72.43)).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "patients of 3-12 kg; 3 12",
                "−1.5 (−7.6 to 4.6); −1.5 −7.6 4.6",
                "61 (52-74) mmHg; 61 52 74",
                "quillane-15/1.0 L/min; 15 1.0",
                "as of 2026-11-20; 2026-11-20",
                "Comparand 0.1.0, table T2r3; 0.1.0 T2r3",
                "+17.2 (95 % CI 12.8 to 21.6); +17.2 95 12.8 21.6",
                "≥ 85 or 0,77; 85 0,77",
                "1.2 × 10⁻⁵ g; 1.2×10⁻⁵"
            })
    @DisplayName("numbers are picked out of a text as a reader would")
    void tokens(String text, String expected) {
        assertThat(NumberTokens.of(text).stream().map(Token::text).toList()).containsExactly(expected.split(" "));
    }

    private static Stream<String> untraced(Place place) {
        return place.from().untraced(Exempt.without(place)).stream()
                .map(n -> "%s: %s in \"%s\"".formatted(place.where(), n, place.text()));
    }

    /** A printed number with its last digit changed. */
    private record Change(Place place, Token token) {

        String changed() {
            var text = Exempt.without(place);
            int last = token.start() + lastDigit(text.substring(token.start()));
            char digit = (char) ('0' + (text.charAt(last) - '0' + 1) % 10);
            return text.substring(0, last) + digit + text.substring(last + 1);
        }

        private int lastDigit(String from) {
            return from.indexOf(token.text().replace('−', from.charAt(0) == '-' ? '-' : '−'))
                    + token.text().length()
                    - 1;
        }

        boolean isMissed() {
            return !place.from().untraced(changed()).isEmpty();
        }
    }
}
