package comparand.compare;

import comparand.model.Compared;
import comparand.model.Comparison;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What sources say together when some are left out, for a reader who may try that without this tool at hand. Of few sources
 * every choice of two or more; of many, each left out by itself.
 */
public final class FewerSources {

    /** Sources of which every choice is worked out: 25 choices of five. */
    private static final int FEW = 5;

    private FewerSources() {}

    public static Compared in(Compared compared) {
        return compared.withFewer(compared.together().stream()
                .flatMap(whole -> choices(whole.each()).stream())
                .flatMap(kept -> Pooling.together(kept).stream())
                .toList());
    }

    private static List<List<Comparison>> choices(List<Comparison> all) {
        return all.size() <= FEW ? everyChoice(all) : eachLeftOut(all);
    }

    private static List<List<Comparison>> eachLeftOut(List<Comparison> all) {
        return all.stream()
                .map(left -> all.stream().filter(c -> !c.equals(left)).toList())
                .toList();
    }

    /** By the bits of a number; without all of them, which is the report itself. */
    private static List<List<Comparison>> everyChoice(List<Comparison> all) {
        var choices = new ArrayList<List<Comparison>>();
        for (int bits = 1; bits < (1 << all.size()) - 1; bits++) {
            if (Integer.bitCount(bits) > 1) {
                int kept = bits;
                choices.add(IntStream.range(0, all.size())
                        .filter(i -> (kept & 1 << i) != 0)
                        .mapToObj(all::get)
                        .toList());
            }
        }
        return choices;
    }
}
