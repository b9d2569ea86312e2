package comparand.manual.example;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A finding as the tool printed it.
 *
 * @param severity STOP, HOLD or NOTE
 * @param message with the full stop it is printed with
 * @param why what it says behind {@code why:}
 * @param fix what it says behind {@code fix:}
 * @param block all its lines, as printed
 */
public record Said(String severity, String code, String message, String why, String fix, String block) {

    private static final Pattern FIRST = Pattern.compile("(STOP|HOLD|NOTE) ([a-z0-9-]+)  (.*)");
    private static final String WHY = "  why: ";
    private static final String FIX = "  fix: ";

    /** Every finding in what a command printed. */
    public static List<Said> in(String printed) {
        var found = new ArrayList<Said>();
        for (var block : printed.split("\n\n", -1)) {
            of(block.strip().lines().toList()).ifPresent(found::add);
        }
        return found;
    }

    private static Optional<Said> of(List<String> lines) {
        for (int at = 0; at < lines.size(); at++) {
            var first = FIRST.matcher(lines.get(at));
            if (first.matches() && at + 3 < lines.size()) {
                var block = lines.subList(at, lines.size());
                return Optional.of(new Said(
                        first.group(1),
                        first.group(2),
                        block.get(1).strip(),
                        behind(WHY, block),
                        behind(FIX, block),
                        String.join("\n", block)));
            }
        }
        return Optional.empty();
    }

    private static String behind(String word, List<String> block) {
        return block.stream()
                .filter(l -> l.startsWith(word))
                .map(l -> l.substring(word.length()))
                .findFirst()
                .orElse("");
    }
}
