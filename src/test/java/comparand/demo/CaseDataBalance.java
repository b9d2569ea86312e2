package comparand.demo;

import comparand.model.Answer;
import comparand.stat.LocalMean;
import comparand.stat.Moments;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Random;
import java.util.function.BiConsumer;
import java.util.function.ToDoubleFunction;

/**
 * Exchanges results between cases of different hospitals until hospitals differ by so much that the uncertainty which
 * allows for them is the one over all cases. Means and SDs over all cases, which the scenario prints, stay as they are,
 * and so do the intervals that it prints of their differences.
 */
final class CaseDataBalance {

    private static final double GOOD_ENOUGH = 0.001;
    /** Few cases can be shared out in few ways. */
    private static final double WITHIN = 0.02;

    private static final int TRIES = 200_000;

    private final List<CaseDataPatient> patients;
    private final ToDoubleFunction<CaseDataPatient> result;
    private final BiConsumer<CaseDataPatient, CaseDataPatient> exchange;

    /**
     * Before anything is exchanged.
     *
     * @param exchange of the results of two cases; twice is not at all
     */
    CaseDataBalance(
            List<CaseDataPatient> patients,
            ToDoubleFunction<CaseDataPatient> result,
            BiConsumer<CaseDataPatient, CaseDataPatient> exchange) {
        this.patients = patients;
        this.result = result;
        this.exchange = exchange;
    }

    void reach(Random random) {
        double off = off();
        for (int i = 0; i < TRIES && off > GOOD_ENOUGH; i++) {
            var moves = new ArrayDeque<Runnable>();
            for (int k = 1 + random.nextInt(3); k > 0; k--) {
                var one = patients.get(random.nextInt(patients.size()));
                var other = patients.get(random.nextInt(patients.size()));
                moves.push(() -> exchange.accept(one, other));
            }
            // the last one forth is the first one back
            moves.descendingIterator().forEachRemaining(Runnable::run);
            double now = off();
            if (now < off) {
                off = now;
            } else {
                moves.forEach(Runnable::run);
            }
        }
        if (off > WITHIN) {
            throw new IllegalStateException("no exchange balances the hospitals of %s: %s".formatted(patients, off));
        }
    }

    /** By how much the uncertainty that allows for hospitals is off the one that does not, as a share. */
    private double off() {
        var byHospital = new EnumMap<CaseDataHospital, List<Double>>(CaseDataHospital.class);
        patients.forEach(p ->
                byHospital.computeIfAbsent(p.hospital(), h -> new ArrayList<>()).add(result.applyAsDouble(p)));
        var centres = byHospital.values().stream()
                .map(v -> v.stream().mapToDouble(d -> d).toArray())
                .toList();
        var allowing = LocalMean.of(centres, Answer.LEVEL).orElseThrow().estimate();
        var all = Moments.of(patients.stream().mapToDouble(result).toArray()).estimate();
        // the degrees of freedom of a difference are more than those of one side, so half of the way to equal widths
        double errors = allowing.se() / all.se();
        double widths = allowing.interval(Answer.LEVEL).halfWidth()
                / all.interval(Answer.LEVEL).halfWidth();
        // with like spreads in both hospitals hardly a degree of freedom is lost
        double lost = Math.max(0, 0.9 - allowing.df() / (patients.size() - centres.size()));
        return Math.abs((errors + widths) / 2 - 1) + lost;
    }
}
