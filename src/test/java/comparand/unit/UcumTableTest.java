package comparand.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.w3c.dom.Element;
import org.xml.sax.SAXException;

/**
 * Holds every row of the unit table against the published UCUM tables: the file ucum-essence.xml, version 2.2 of 17 June
 * 2024, as it lies in the test dependency org.fhir:ucum.
 */
class UcumTableTest {

    private static final Map<String, Element> PUBLISHED = new HashMap<>();

    @BeforeAll
    static void readPublishedTable() throws IOException, ParserConfigurationException, SAXException {
        try (var in = UcumTableTest.class.getResourceAsStream("/ucum-essence.xml")) {
            var factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            var root = factory.newDocumentBuilder().parse(in).getDocumentElement();
            assertThat(root.getAttribute("version")).isEqualTo("2.2");
            for (var kind : new String[] {"prefix", "base-unit", "unit"}) {
                var nodes = root.getElementsByTagName(kind);
                for (int i = 0; i < nodes.getLength(); i++) {
                    var row = (Element) nodes.item(i);
                    PUBLISHED.put(kind + " " + row.getAttribute("Code"), row);
                }
            }
        }
    }

    @TestFactory
    Stream<DynamicTest> everyPrefixHasItsPublishedValue() {
        return UcumTable.PREFIXES.entrySet().stream()
                .map(p -> dynamicTest(
                        p.getKey(),
                        () -> assertThat(p.getValue())
                                .isEqualTo(UcumTable.fraction(
                                        value(published("prefix", p.getKey())).getAttribute("value")))));
    }

    @TestFactory
    Stream<DynamicTest> everyBaseUnitIsPublishedAsOne() {
        return UcumTable.BASE.stream()
                .map(b -> dynamicTest(b, () -> assertThat(PUBLISHED).containsKey("base-unit " + b)));
    }

    @TestFactory
    Stream<DynamicTest> everyAtomHasItsPublishedDefinition() {
        return UcumTable.ATOMS.keySet().stream()
                .map(code -> dynamicTest(code, () -> {
                    var row = published("unit", code);
                    var definition = value(row);
                    var ours = Ucum.read(code).orThrow();
                    var expression = Ucum.read(definition.getAttribute("Unit")).orThrow();
                    var factor =
                            expression.scale().step().multiply(UcumTable.fraction(definition.getAttribute("value")));

                    assertThat(ours.dimension()).isEqualTo(expression.dimension());
                    assertThat(ours.scale().step()).isEqualTo(factor);
                    assertThat(UcumTable.isMetric(code))
                            .isEqualTo(row.getAttribute("isMetric").equals("yes"));
                }));
    }

    @TestFactory
    Stream<DynamicTest> everySpecialUnitIsPublishedAsSpecial() {
        return UcumTable.SPECIAL.keySet().stream()
                .map(code -> dynamicTest(
                        code,
                        () -> assertThat(published("unit", code).getAttribute("isSpecial"))
                                .isEqualTo("yes")));
    }

    @Test
    void millimetreOfMercuryIsTheTabulatedOneAndNotTheConventionalOne() {
        var pascal = Unit.of("mmHg").convert(BigFraction.ONE, Unit.of("Pa"));

        assertThat(pascal).isEqualTo(UcumTable.fraction("133.322"));
        // the conventional value, 13595.1 kg/m³ × 9.80665 m/s², is 3 parts in a million larger
        assertThat(133.322387415 / pascal.doubleValue() - 1).isBetween(2.8e-6, 3.0e-6);
    }

    private static Element published(String kind, String code) {
        return Optional.ofNullable(PUBLISHED.get(kind + " " + code))
                .orElseThrow(() -> new AssertionError("UCUM publishes no " + kind + " " + code));
    }

    private static Element value(Element row) {
        return (Element) row.getElementsByTagName("value").item(0);
    }
}
