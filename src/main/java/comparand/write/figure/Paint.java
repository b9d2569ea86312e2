package comparand.write.figure;

import java.util.Optional;

/**
 * How a closed shape is drawn: its inside first, then its outline.
 *
 * @param fill red, green and blue, eight bits each; opaque
 */
public record Paint(Optional<Integer> fill, Optional<Pen> outline) {

    static Paint filled(int rgb) {
        return new Paint(Optional.of(rgb), Optional.empty());
    }

    static Paint hollow(Pen pen) {
        return new Paint(Optional.of(Type.WHITE), Optional.of(pen));
    }

    static Paint outlined(Pen pen) {
        return new Paint(Optional.empty(), Optional.of(pen));
    }
}
