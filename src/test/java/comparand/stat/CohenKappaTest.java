package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import comparand.stat.CohenKappa.Pair;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Agreement beyond chance, against values that others published. */
final class CohenKappaTest {

    /** R package tidycomm, its own test of Cohen's kappa: nine ratings by two coders give 0.633 to three decimals. */
    @Test
    void nineRatingsOfAPublicStatisticsPackage() {
        int[] first = {1, 2, 4, 1, 2, 1, 1, 1, 2};
        int[] second = {1, 2, 3, 1, 2, 2, 1, 1, 2};
        var pairs = IntStream.range(0, first.length)
                .mapToObj(i -> new Pair("" + first[i], "" + second[i]))
                .toList();
        assertThat(CohenKappa.of(pairs).value().orElseThrow()).isCloseTo(0.633, within(0.0005));
    }

    /**
     * Sim and Wright, The kappa statistic in reliability studies, Physical Therapy 2005;85:257-268: two clinicians on 39
     * patients, 22 and 11 alike, 2 and 4 not; kappa 0.67 to two decimals. From memory.
     */
    @Test
    void twoCliniciansOfATutorial() {
        var kappa = CohenKappa.of(table(22, 2, 4, 11));
        assertThat(kappa.same()).isEqualTo(33);
        assertThat(kappa.of()).isEqualTo(39);
        assertThat(kappa.value().orElseThrow()).isCloseTo(0.67, within(0.005));
    }

    @Test
    void oneCategoryForAllIsAgreementByChance() {
        assertThat(CohenKappa.of(table(9, 0, 0, 0)).value()).isEmpty();
        assertThat(CohenKappa.of(List.of()).value()).isEmpty();
    }

    private static List<Pair> table(int a, int b, int c, int d) {
        var pairs = new ArrayList<Pair>();
        pairs.addAll(Collections.nCopies(a, new Pair("yes", "yes")));
        pairs.addAll(Collections.nCopies(b, new Pair("yes", "no")));
        pairs.addAll(Collections.nCopies(c, new Pair("no", "yes")));
        pairs.addAll(Collections.nCopies(d, new Pair("no", "no")));
        return pairs;
    }
}
