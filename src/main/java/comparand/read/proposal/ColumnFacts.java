package comparand.read.proposal;

import comparand.model.DataCell;
import comparand.model.library.DateOrder;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** What was seen in the cells of one column. */
final class ColumnFacts {

    /** More different words than these are names, not codes. */
    private static final int MOST_CODES = 12;

    /** Words that stand for nothing measured wherever they stand. Common practice. */
    static final Set<String> MISSING = Set.of(
            "n.d.",
            "n.d",
            "nd",
            "N.D.",
            "n.a.",
            "n/a",
            "N/A",
            "NA",
            "na",
            "k.A.",
            "-",
            "--",
            "—",
            "–",
            ".",
            "?",
            "missing",
            "not done",
            "#N/A");

    private static final Pattern BOUND = Pattern.compile("[<>≤≥]\\s*\\d.*");
    private static final Pattern WHOLE = Pattern.compile("[+\\-−]?\\d+");
    private static final Pattern POINT = Pattern.compile("[+\\-−]?\\d+\\.\\d+");
    private static final Pattern COMMA = Pattern.compile("[+\\-−]?\\d+,\\d+");
    private static final Pattern THOUSANDS = Pattern.compile("[+\\-−]?[1-9]\\d{0,2}([.,])\\d{3}");

    private int filled;
    private int numbers;
    private int points;
    private int commas;
    private int maybeThousands;
    private int stored;
    private int besideNumbers;
    private int dates;
    private int storedDates;
    private final Set<DateOrder> orders = EnumSet.allOf(DateOrder.class);
    private final Map<String, Integer> words = new LinkedHashMap<>();
    private final Map<String, Integer> notNumbers = new LinkedHashMap<>();

    void see(DataCell cell) {
        if (cell.isBlank()) {
            return;
        }
        filled++;
        var text = cell.text();
        count(words, text);
        if (cell instanceof DataCell.Figure) {
            stored++;
            numbers++;
        } else if (cell instanceof DataCell.When) {
            storedDates++;
            dates++;
        } else {
            text(text);
        }
    }

    private void text(String text) {
        var possible = EnumSet.noneOf(DateOrder.class);
        for (var order : DateOrder.values()) {
            if (order.read(text).isPresent()) {
                possible.add(order);
            }
        }
        if (!possible.isEmpty()) {
            dates++;
            orders.retainAll(possible);
        } else if (WHOLE.matcher(text).matches()) {
            numbers++;
        } else if (POINT.matcher(text).matches() || COMMA.matcher(text).matches()) {
            numbers++;
            if (THOUSANDS.matcher(text).matches()) {
                maybeThousands++;
            } else if (text.indexOf(',') < 0) {
                points++;
            } else {
                commas++;
            }
        } else {
            count(notNumbers, text);
            besideNumbers += MISSING.contains(text) || BOUND.matcher(text).matches() ? 1 : 0;
        }
    }

    private static void count(Map<String, Integer> counts, String word) {
        if (counts.size() <= MOST_CODES || counts.containsKey(word)) {
            counts.merge(word, 1, Integer::sum);
        }
    }

    int filled() {
        return filled;
    }

    int points() {
        return points;
    }

    int commas() {
        return commas;
    }

    /** Numbers such as 12,345 of which nobody can say whether they have decimals. */
    int maybeThousands() {
        return maybeThousands;
    }

    /** Numbers that are texts: they need a decimal sign. */
    int textNumbers() {
        return numbers - stored;
    }

    /** Whether most of it is numbers, codes for missing ones and bounds not counted. */
    boolean isNumeric() {
        return numbers > 0 && numbers * 10 >= (filled - besideNumbers) * 7;
    }

    boolean isDates() {
        return filled > 0 && dates * 10 >= filled * 9;
    }

    boolean hasTextDates() {
        return dates > storedDates;
    }

    /** The orders in which all its dates could be written. */
    Set<DateOrder> orders() {
        return orders;
    }

    /** The different words in it, if they are few enough to be codes; else empty. */
    List<String> codes() {
        return words.size() > MOST_CODES ? List.of() : List.copyOf(words.keySet());
    }

    /** What stands among its numbers and is none, with how often. */
    Map<String, Integer> notNumbers() {
        return notNumbers;
    }

    /** A few of its words, for a comment. */
    List<String> examples() {
        return new ArrayList<>(words.keySet()).subList(0, Math.min(3, words.size()));
    }
}
