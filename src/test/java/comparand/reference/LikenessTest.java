package comparand.reference;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.model.library.PartialDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When two references are proposed as one work, and when they are not. */
class LikenessTest {

    private static final String TITLE = "Pressure drop and gas transfer of one small oxygenator";

    private static Reference work(String title, String author, int year, Map<Field, String> fields) {
        return new Reference(
                "article-journal",
                title,
                List.of(Name.person(author, "J.")),
                List.of(),
                PartialDate.read("" + year),
                fields,
                Optional.empty(),
                List.of());
    }

    private static Map<Field, String> fields(Field field, String text) {
        return new EnumMap<>(Map.of(field, text));
    }

    private static Optional<Likeness.Rule> rule(Reference a, Reference b) {
        assertThat(Likeness.of(a, b).map(Likeness::rule))
                .isEqualTo(Likeness.of(b, a).map(Likeness::rule));
        return Likeness.of(a, b).map(Likeness::rule);
    }

    @Test
    void aDoiIsTheSameInCapitalsAndBehindAnAddress() {
        var one = work("A", "Ode", 2000, fields(Field.DOI, "10.5555/ABC.1"));
        var other = work("B", "Other", 2010, fields(Field.DOI, "https://doi.org/10.5555/abc.1"));

        assertThat(rule(one, other)).contains(Likeness.Rule.DOI);
    }

    @Test
    void thePubMedNumberCountsNextAndThenTitleYearAndAuthor() {
        assertThat(rule(
                        work("A", "Ode", 2000, fields(Field.PMID, "0123")),
                        work("B", "X", 2010, fields(Field.PMID, "123"))))
                .contains(Likeness.Rule.PMID);
        assertThat(rule(work(TITLE, "Müller", 2020, Map.of()), work(TITLE + ".", "Muller", 2021, Map.of())))
                .contains(Likeness.Rule.TITLE);
    }

    @Test
    void anotherYearAnotherAuthorOrAnotherStageIsAnotherWork() {
        var work = work(TITLE, "Ode", 2020, Map.of());
        var preprint = new Reference(
                "article", TITLE, work.authors(), List.of(), work.issued(), Map.of(), Optional.empty(), List.of());

        assertThat(rule(work, work(TITLE, "Ode", 2022, Map.of()))).isEmpty();
        assertThat(rule(work, work(TITLE, "Marsh", 2020, Map.of()))).isEmpty();
        assertThat(rule(work, preprint)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Haemolysis of a small oxygenator on the bench | Hemolysis of a small oxygenator on the bench | true",
                "Pressure drop of small oxygenators: a bench study | Pressure drop of small oxygenators | true",
                "Flow in <i>vitro</i> of three pumps | FLOW IN VITRO OF THREE PUMPS | false",
                "Gas transfer of three pumps at rest | Gas transfer of three pumps, at rest. | true",
                "Small oxygenators on the bench, part I | Small oxygenators on the bench, part II | false",
                "Pressure drop at 1.0 L/min in one oxygenator | Pressure drop at 1.5 L/min in one oxygenator | false",
                "Pressure drop in adults on bypass | Pressure drop in infants on bypass | false",
                "Bypass: a review | Bypass: an update | false",
                "Bypass | Bypass: a review | false",
                "Über die Strömung in kleinen Oxygenatoren | Uber die Stromung in kleinen Oxygenatoren | true"
            })
    void titlesAreNearEqualByLettersAndTheirNumbersAlike(String one, String other, boolean alike) {
        assertThat(Titles.alike(one, other)).isEqualTo(alike);
        assertThat(Titles.alike(other, one)).isEqualTo(alike);
    }

    @Test
    void namesOfSourcesAreLatinLettersAndTheYear() {
        var ids = new SourceId(java.util.Set.of("ode-2020"));

        assertThat(Stream.of("Ode", "Ode", "van der Bergé", "Łukasz-Ñandú", "李", "O'Neil")
                        .map(a -> ids.next(work(TITLE, a, 2020, Map.of()))))
                .containsExactly(
                        "ode-2020-b",
                        "ode-2020-c",
                        "van-der-berge-2020",
                        "lukasz-nandu-2020",
                        "pressure-drop-and-2020",
                        "oneil-2020");
    }

    @Test
    void aThousandNamesakesHaveAThousandNames() {
        var ids = new SourceId(java.util.Set.of());

        assertThat(Stream.generate(() -> ids.next(work(TITLE, "Ode", 2020, Map.of())))
                        .limit(1000))
                .doesNotHaveDuplicates()
                .allMatch(id -> id.matches("[a-z0-9]+(-[a-z0-9]+)*"));
    }

    @Test
    void aDoiIsReadByItsForm() {
        assertThat(Doi.read("doi: 10.5555/a.b(1)<2>c;d")).contains("10.5555/a.b(1)<2>c;d");
        assertThat(Doi.read("HTTP://DX.DOI.ORG/10.5555/x")).contains("10.5555/x");
        assertThat(Doi.read("11.5555/x")).isEmpty();
        assertThat(Doi.read("10.5/x")).isEmpty();
        assertThat(Doi.read("10.5555/a b")).isEmpty();
        assertThat(Doi.within("J. 2022;5:60. doi: 10.5555/iacs.2022.0060. PMID: 1"))
                .contains("10.5555/iacs.2022.0060");
    }
}
