package comparand.model;

import static comparand.model.library.ScreeningFate.DUPLICATE;
import static comparand.model.library.ScreeningFate.EXCLUDED_AFTER_READING;
import static comparand.model.library.ScreeningFate.EXCLUDED_AT_SCREENING;
import static comparand.model.library.ScreeningFate.INCLUDED;
import static comparand.model.library.ScreeningFate.NOT_RETRIEVED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import comparand.model.ScreeningFlow.Identified;
import comparand.model.ScreeningFlow.Reason;
import comparand.model.library.ScreeningFate;
import comparand.model.library.SearchKind;
import comparand.support.ScreeningLogs;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;

/**
 * The boxes of a flow and what they say of each other: Page MJ, McKenzie JE, Bossuyt PM, et al. The PRISMA 2020 statement: an
 * updated guideline for reporting systematic reviews. BMJ 2021;372:n71, figure 1 and items 16a and 16b.
 */
class ScreeningFlowTest {

    private static final TreeMap<String, comparand.model.library.SourceRecord> NO_SOURCES = new TreeMap<>();

    private static ScreeningFlow flow(ScreeningLogs log) {
        return ScreeningFlow.of(log.log(), NO_SOURCES);
    }

    /**
     * A flow diagram after n71 as an article prints it: records identified 700 (678 from databases, 22 from other sources),
     * duplicates 167, screened 533, excluded 398, sought 135, not retrieved 0, assessed 135, excluded 93, included 42. Figure
     * of the article HE-08-2025-0134 (ftp.nowpublishers.com/view-large/figure/108889566).
     */
    @Example
    @Label("a printed flow of two searches comes out box by box")
    void printedFlowOfTwoSearches() {
        var flow = flow(new ScreeningLogs()
                .search("other", SearchKind.OTHER)
                .records(22, INCLUDED, "")
                .search("databases", SearchKind.DATABASE)
                .records(20, INCLUDED, "")
                .records(93, EXCLUDED_AFTER_READING, "deemed outside scope")
                .records(398, EXCLUDED_AT_SCREENING, "")
                .records(167, DUPLICATE, ""));

        assertThat(flow.identified())
                .containsExactly(
                        new Identified("other", SearchKind.OTHER, 22),
                        new Identified("databases", SearchKind.DATABASE, 678));
        assertThat(boxes(flow)).containsExactly(700, 167, 533, 398, 135, 0, 135, 93, 42);
        assertThat(flow.reasons()).containsExactly(new Reason("deemed outside scope", 93));
    }

    /**
     * Another: identified 162, duplicates 23, screened 139, excluded 25, sought 114, not retrieved 4, assessed 110, excluded 88
     * for "abstract content", included 22. Figure of the article AEDS-09-2025-0494
     * (ftp.nowpublishers.com/view-large/figure/112918370).
     */
    @Example
    @Label("a printed flow with reports that were not to be had comes out box by box")
    void printedFlowWithReportsNotRetrieved() {
        var flow = flow(new ScreeningLogs()
                .search("databases", SearchKind.DATABASE)
                .records(22, INCLUDED, "")
                .records(88, EXCLUDED_AFTER_READING, "abstract content")
                .records(4, NOT_RETRIEVED, "")
                .records(25, EXCLUDED_AT_SCREENING, "")
                .records(23, DUPLICATE, ""));

        assertThat(boxes(flow)).containsExactly(162, 23, 139, 25, 114, 4, 110, 88, 22);
        assertThat(flow.studies()).isEqualTo(22);
    }

    private static List<Integer> boxes(ScreeningFlow flow) {
        return List.of(
                flow.found(),
                flow.duplicates(),
                flow.screened(),
                flow.excluded(),
                flow.sought(),
                flow.notRetrieved(),
                flow.assessed(),
                flow.excludedAfterReading(),
                flow.reports());
    }

    @Property
    @Label("of any log, what is left of each box is the next box, and reasons and searches add up")
    void everyStepAddsUp(@ForAll long seed) {
        var log = random(new Random(seed));
        var flow = flow(log);

        assertThat(flow.found()).isEqualTo(log.size());
        assertThat(flow.found() - flow.duplicates()).isEqualTo(flow.screened());
        assertThat(flow.screened() - flow.excluded()).isEqualTo(flow.sought());
        assertThat(flow.sought() - flow.notRetrieved()).isEqualTo(flow.assessed());
        assertThat(flow.assessed()
                        - flow.reasons().stream().mapToInt(Reason::reports).sum())
                .isEqualTo(flow.reports());
        assertThat(flow.studies()).isBetween(flow.reports() == 0 ? 0 : 1, flow.reports());
        assertThat(flow.reasons().stream().map(Reason::words)).doesNotHaveDuplicates();
        for (var search : flow.identified()) {
            assertThat(search.records()).isEqualTo((int) log.log().records().stream()
                    .filter(r -> r.from().value().equals(search.search()))
                    .count());
        }
    }

    @Property
    @Label("a further record moves its own boxes by one, and no other")
    void oneMoreRecord(@ForAll long seed, @ForAll ScreeningFate fate) {
        var log = random(new Random(seed));
        var before = boxes(flow(log));
        var after = boxes(flow(log.record(fate, "one more", Optional.empty())));

        var moved = switch (fate) {
            case DUPLICATE -> List.of(1, 1, 0, 0, 0, 0, 0, 0, 0);
            case EXCLUDED_AT_SCREENING -> List.of(1, 0, 1, 1, 0, 0, 0, 0, 0);
            case NOT_RETRIEVED -> List.of(1, 0, 1, 0, 1, 1, 0, 0, 0);
            case EXCLUDED_AFTER_READING -> List.of(1, 0, 1, 0, 1, 0, 1, 1, 0);
            case INCLUDED -> List.of(1, 0, 1, 0, 1, 0, 1, 0, 1);
        };
        for (int i = 0; i < moved.size(); i++) {
            assertThat(after.get(i) - before.get(i)).as("box " + i).isEqualTo(moved.get(i));
        }
    }

    private static ScreeningLogs random(Random random) {
        var log = new ScreeningLogs();
        var fates = List.of(ScreeningFate.values());
        for (int s = 0; s <= random.nextInt(4); s++) {
            log.search("s" + s, random.nextBoolean() ? SearchKind.DATABASE : SearchKind.WEBSITE);
            int n = random.nextInt(12);
            for (int i = 0; i < n; i++) {
                var same = random.nextInt(4) == 0 && log.size() > 0
                        ? Optional.of("R" + random.nextInt(log.size()))
                        : Optional.<String>empty();
                log.record(fates.get(random.nextInt(fates.size())), "reason " + random.nextInt(3), same);
            }
        }
        return log;
    }

    @Example
    @Label("reports of one study are one study, also by way of a third report and of one that is left out")
    void studies() {
        var chain = new ScreeningLogs()
                .search("s", SearchKind.DATABASE)
                .record(INCLUDED, "", Optional.empty())
                .record(INCLUDED, "", Optional.of("R0"))
                .record(INCLUDED, "", Optional.of("R1"))
                .record(EXCLUDED_AFTER_READING, "no value", Optional.empty())
                .record(INCLUDED, "", Optional.of("R3"))
                .record(INCLUDED, "", Optional.of("R3"))
                .record(INCLUDED, "", Optional.empty());

        assertThat(flow(chain).reports()).isEqualTo(6);
        assertThat(flow(chain).studies()).isEqualTo(3);
    }

    @Example
    @Label("a flow whose boxes do not add up does not exist")
    void refused() {
        var found = List.of(new Identified("s", SearchKind.DATABASE, 19));

        assertThatThrownBy(() -> new ScreeningFlow(found, 2, 17, 3, 14, 0, 14, List.of(new Reason("a", 5)), 10, 9))
                .hasMessageContaining("- 5 = 10");
        assertThatThrownBy(() -> new ScreeningFlow(found, 2, 18, 3, 15, 0, 15, List.of(new Reason("a", 5)), 10, 9))
                .hasMessageContaining("19 - 2 = 18");
        assertThatThrownBy(() -> new ScreeningFlow(found, 2, 17, 3, 14, 0, 14, List.of(new Reason("a", 4)), 10, 11))
                .hasMessageContaining("10 reports of 11 studies");
    }
}
