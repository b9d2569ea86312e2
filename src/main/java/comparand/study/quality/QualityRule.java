package comparand.study.quality;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;

/** Looks at the rows of one file for one thing. A rule is made anew for each file, and sees its rows in file order. */
public interface QualityRule {

    /** Names the rule for good, in words joined by hyphens. */
    String code();

    /** Why it matters: what goes wrong if nobody looks. */
    String why();

    /** What to do. */
    String fix();

    /** What is to be said of a row. */
    Optional<QualityFinding> look(QualityRow row);

    /** After the last row: what only the rows together show, by line. A remark; the rows have taken part by then. */
    default SortedMap<Integer, String> together() {
        return Collections.emptySortedMap();
    }
}
