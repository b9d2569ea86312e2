package comparand.support;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A finding as a person reads it on the terminal.
 *
 * @param place file, line and column
 */
public record PrintedFinding(String severity, String code, String place, String message, String fix) {

    private static final Pattern HEAD = Pattern.compile("(STOP|HOLD|NOTE) ([a-z0-9-]+) {2}(.+:\\d+:\\d+)");
    private static final String FIX = "  fix: ";

    /** The findings of a printed list, in its order. */
    public static List<PrintedFinding> in(String text) {
        var found = new ArrayList<PrintedFinding>();
        var lines = text.lines().toList();
        for (int i = 0; i + 1 < lines.size(); i++) {
            var head = HEAD.matcher(lines.get(i));
            if (head.matches()) {
                var fix = lines.subList(i, lines.size()).stream()
                        .filter(line -> line.startsWith(FIX))
                        .findFirst()
                        .map(line -> line.substring(FIX.length()))
                        .orElse("");
                var message = lines.get(i + 1).strip().replaceAll("\\.$", "");
                found.add(new PrintedFinding(head.group(1), head.group(2), head.group(3), message, fix));
            }
        }
        return found;
    }

    public String file() {
        return place.replaceAll(":\\d+:\\d+$", "");
    }

    public int line() {
        return Integer.parseInt(place.replaceAll("^.*:(\\d+):\\d+$", "$1"));
    }

    public int column() {
        return Integer.parseInt(place.replaceAll("^.*:", ""));
    }
}
