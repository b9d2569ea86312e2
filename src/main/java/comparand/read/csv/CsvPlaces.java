package comparand.read.csv;

import comparand.diag.Span;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

/** Finds the cell of a row in the text again, for a finding: the parser does not say where its cells begin. */
final class CsvPlaces {

    private final CsvText text;
    private final String file;
    private final char separator;

    CsvPlaces(CsvText text, String file, char separator) {
        this.text = text;
        this.file = file;
        this.separator = separator;
    }

    /**
     * The stretch a cell covers; where it runs over lines, its part on the first of them.
     *
     * @param line on which its row begins
     * @param cell counted from 0
     */
    Span cell(int line, int cell) {
        try (var lines = new BufferedReader(text.open())) {
            for (int skipped = 1; skipped < line; skipped++) {
                if (lines.readLine() == null) {
                    return new Span(file, line, 1, 1);
                }
            }
            var walk = new Walk(cell, line);
            var found = Optional.<Span>empty();
            for (var raw = lines.readLine(); raw != null && found.isEmpty(); raw = lines.readLine()) {
                found = walk.through(raw);
                if (!walk.quoted) {
                    break;
                }
            }
            return found.orElse(new Span(file, line, 1, 1));
        } catch (IOException | UncheckedIOException e) {
            return new Span(file, line, 1, 1);
        }
    }

    /** Passes over separators that do not stand in quotes, and over line ends that do. */
    private final class Walk {
        private final int wanted;
        private int line;
        private int passed;
        private boolean quoted;

        Walk(int wanted, int line) {
            this.wanted = wanted;
            this.line = line;
        }

        Optional<Span> through(String raw) {
            int start = 0;
            boolean begunHere = !quoted;
            for (int i = 0; i < raw.length(); i++) {
                char c = raw.charAt(i);
                quoted ^= c == '"';
                if (c == separator && !quoted) {
                    if (passed == wanted && begunHere) {
                        return Optional.of(span(raw, start, i));
                    }
                    passed++;
                    start = i + 1;
                    begunHere = true;
                }
            }
            var last = passed == wanted && begunHere
                    ? Optional.of(span(raw, start, raw.length()))
                    : Optional.<Span>empty();
            line++;
            return last;
        }

        private Span span(String raw, int from, int to) {
            int column = raw.codePointCount(0, from) + 1;
            return new Span(file, line, column, Math.max(1, raw.codePointCount(from, to)));
        }
    }
}
