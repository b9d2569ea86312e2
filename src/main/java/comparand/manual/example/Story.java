package comparand.manual.example;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The blocks of a chapter, told one after the other in a folder of their own. The first word behind the fence says what a block
 * is: {@code yaml}, {@code csv}, {@code properties} or {@code text} with a file name is written there ({@code +} before the name
 * adds to it), {@code comparand} is run line by line, ending as the number behind it says; anything else is only shown.
 */
public final class Story {

    private final Bench bench;
    private final Path place;

    private Story(Bench bench, Path place) {
        this.bench = bench;
        this.place = place;
    }

    /** Begins a story for each chapter. */
    public interface Teller {
        Story story();
    }

    /** Stories with a new library each, as {@code library}. */
    public static Teller teller(Bench bench) {
        return () -> {
            try {
                return new Story(bench, bench.place());
            } catch (IOException e) {
                throw new IllegalStateException("no folder for a chapter", e);
            }
        };
    }

    /**
     * A block as it is shown.
     *
     * @param file what it was written to; may be empty
     * @param text its text, with what was printed where it was run
     */
    public record Told(String file, String text, boolean isRun) {}

    /** Tells a block. */
    public Told tell(String info, String text) {
        var words = info.strip().split(" +", -1);
        if (words[0].equals("comparand")) {
            return run(text, words.length > 1 ? Integer.parseInt(words[1]) : 0);
        }
        if (words.length > 1 && !words[0].equals("java")) {
            write(words[1], text);
            return new Told(words[1].replaceFirst("^\\+", ""), text, false);
        }
        return new Told(words.length > 1 ? words[1] : "", text, false);
    }

    private void write(String name, String text) {
        var adds = name.startsWith("+");
        var file = place.resolve(adds ? name.substring(1) : name);
        try {
            Bench.write(file, (adds ? Files.readString(file) : "") + text);
        } catch (IOException e) {
            throw new IllegalStateException("a chapter cannot write " + name, e);
        }
    }

    private Told run(String lines, int code) {
        var out = new StringBuilder();
        for (var line : lines.strip().lines().toList()) {
            var run = bench.run(place, line.replaceFirst("^comparand ", ""));
            if (run.code() != code) {
                throw new IllegalStateException("a chapter says that `%s` ends with %d; it ended with %d: %s%s"
                        .formatted(line, code, run.code(), run.out(), run.err()));
            }
            out.append("$ ").append(line).append('\n').append(run.out()).append(run.err());
        }
        return new Told("", out.toString(), true);
    }
}
