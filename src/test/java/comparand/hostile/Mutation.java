package comparand.hostile;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Changes an input by seeded chance: bytes, words, numbers, stretches, and lines with their indentation. */
final class Mutation {

    private static final int LARGEST = 12_000;

    /** Signs that mean something to some format, or to an encoding. */
    private static final String[] SIGNS = {
        "\0",
        "\t",
        "\n",
        "\r",
        "\r\n",
        "\u001b",
        " ",
        "\"",
        "'",
        "#",
        "%",
        "&",
        "*",
        "!",
        "|",
        ">",
        "<",
        "-",
        "--",
        "---",
        "...",
        ":",
        ": ",
        "=",
        "@",
        "+",
        "[",
        "]",
        "{",
        "}",
        "(",
        ")",
        "\\",
        "/",
        "../",
        "~",
        "^",
        ",",
        ";",
        ".",
        "?",
        "? ",
        "\\u0000",
        "\\uD800",
        "\\x00",
        "&#0;",
        "]]>",
        "-->",
        "\u0085",
        "\u00a0",
        "\u2028",
        "\u202e",
        "\ufeff",
        "\ufffe",
        "\ud83d\ude00",
        "\u0130",
        "\u00df",
        "\u0660",
        "\u2212",
        "\u00b1"
    };

    private static final String[] NUMBERS = {
        "0",
        "-0",
        "1",
        "-1",
        "00",
        "0.0",
        "1e308",
        "1e-308",
        "1e999",
        "9".repeat(40),
        "0." + "0".repeat(40) + "1",
        "1,5",
        "1.234,5",
        "1,234.5",
        "2147483648",
        "-2147483649",
        "9223372036854775808",
        "NaN",
        "Infinity",
        "0x1F",
        "1_000",
        "12:30",
        "1900-02-29",
        "9999-12-31",
        "0000-00-00",
        "999999999",
        "1048577",
        "16385",
        "100 %",
        "1e5 mmHg"
    };

    private final SplittableRandom random;
    private final List<String> words;
    private final List<byte[]> others;

    /**
     * Changes from a source of chance.
     *
     * @param words of the format
     * @param others from which stretches are taken
     */
    Mutation(SplittableRandom random, List<String> words, List<byte[]> others) {
        this.random = random;
        this.words = words;
        this.others = others;
    }

    byte[] of(byte[] input) {
        var changed = input;
        int edits = 1 << random.nextInt(4);
        for (int i = 0; i < edits; i++) {
            changed = once(changed);
        }
        int most = Math.max(LARGEST, input.length);
        return changed.length <= most ? changed : Arrays.copyOf(changed, most);
    }

    private byte[] once(byte[] in) {
        int at = random.nextInt(in.length + 1);
        int length = in.length == at ? 0 : 1 + random.nextInt(Math.min(in.length - at, 1 << random.nextInt(1, 9)));
        return switch (random.nextInt(13)) {
            case 0 -> flipped(in, at);
            case 1 -> joined(in, at, new byte[0], at + length);
            case 2 -> joined(in, at + length, Arrays.copyOfRange(in, at, at + length), at + length);
            case 3 -> joined(in, at, bytes(SIGNS[random.nextInt(SIGNS.length)]), at);
            case 4 -> joined(in, at, bytes(SIGNS[random.nextInt(SIGNS.length)]), Math.min(in.length, at + 1));
            case 5 -> words.isEmpty() ? in : joined(in, at, bytes(words.get(random.nextInt(words.size()))), at);
            case 6 -> number(in, at);
            case 7 -> spliced(in, at);
            case 8, 9, 10 -> lines(in, at);
            case 11 -> words.isEmpty() ? in : value(in, at);
            default -> repeated(in, at, length);
        };
    }

    private byte[] flipped(byte[] in, int at) {
        if (at == in.length) {
            return in;
        }
        var out = in.clone();
        out[at] ^= (byte) (1 << random.nextInt(8));
        return out;
    }

    /** Puts an extreme number in the place of the next one. */
    private byte[] number(byte[] in, int from) {
        int at = from;
        while (at < in.length && !isDigit(in[at])) {
            at++;
        }
        int end = at;
        while (end < in.length && (isDigit(in[end]) || in[end] == '.')) {
            end++;
        }
        return joined(in, at, bytes(NUMBERS[random.nextInt(NUMBERS.length)]), end);
    }

    private static boolean isDigit(byte b) {
        return b >= '0' && b <= '9';
    }

    private byte[] spliced(byte[] in, int at) {
        var other = others.get(random.nextInt(others.size()));
        if (other.length == 0) {
            return in;
        }
        int from = random.nextInt(other.length);
        int to = from + 1 + random.nextInt(Math.min(other.length - from, 400));
        return joined(in, at, Arrays.copyOfRange(other, from, to), at);
    }

    private byte[] repeated(byte[] in, int at, int length) {
        var out = new ByteArrayOutputStream();
        int times = 1 << random.nextInt(1, 8);
        int once = Math.min(length, 8);
        for (int i = 0; i < times; i++) {
            out.write(in, at, once);
        }
        return joined(in, at, out.toByteArray(), at);
    }

    /** Takes a line with those indented under it out, doubles it, moves it, or moves it to the left or right. */
    private byte[] lines(byte[] in, int at) {
        int from = start(in, at);
        int indent = indent(in, from);
        int to = next(in, from);
        while (to < in.length && indent(in, to) > indent) {
            to = next(in, to);
        }
        var block = Arrays.copyOfRange(in, from, to);
        return switch (random.nextInt(5)) {
            case 0 -> joined(in, from, new byte[0], to);
            case 1 -> joined(in, to, block, to);
            case 2 -> {
                var without = joined(in, from, new byte[0], to);
                int place = start(without, random.nextInt(without.length + 1));
                yield joined(without, place, block, place);
            }
            case 3 -> joined(in, from, bytes("  "), from);
            default -> joined(in, from, new byte[0], Math.min(to, from + Math.min(indent, 2)));
        };
    }

    private static int start(byte[] in, int at) {
        int from = Math.min(at, in.length);
        while (from > 0 && in[from - 1] != '\n') {
            from--;
        }
        return from;
    }

    private static int next(byte[] in, int at) {
        int to = at;
        while (to < in.length && in[to] != '\n') {
            to++;
        }
        return Math.min(in.length, to + 1);
    }

    private static int indent(byte[] in, int from) {
        int n = from;
        while (n < in.length && (in[n] == ' ' || in[n] == '-')) {
            n++;
        }
        return n - from;
    }

    /** Puts a word in the place of what stands behind a colon, comma or sign of equality, up to the next. */
    private byte[] value(byte[] in, int from) {
        int at = from;
        while (at < in.length && ":,=;".indexOf(in[at]) < 0) {
            at++;
        }
        at = Math.min(in.length, at + 1);
        int end = at;
        while (end < in.length && ",;{}[]\n".indexOf(in[end]) < 0) {
            end++;
        }
        return joined(in, at, bytes(" " + words.get(random.nextInt(words.size()))), end);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] joined(byte[] bytes, int to, byte[] middle, int from) {
        var out = new byte[to + middle.length + Math.max(0, bytes.length - from)];
        System.arraycopy(bytes, 0, out, 0, to);
        System.arraycopy(middle, 0, out, to, middle.length);
        if (from < bytes.length) {
            System.arraycopy(bytes, from, out, to + middle.length, bytes.length - from);
        }
        return out;
    }
}
