package comparand.study.quality;

import static java.util.Objects.requireNonNull;

/**
 * What a rule found in a row.
 *
 * @param message one sentence without a full stop that names the value and the limit
 */
public record QualityFinding(String message, Effect effect) {

    public QualityFinding {
        requireNonNull(effect, "effect");
        if (message.isBlank() || message.endsWith(".")) {
            throw new IllegalArgumentException("a message is one sentence without a full stop: " + message);
        }
    }

    static QualityFinding remark(String message) {
        return new QualityFinding(message, Effect.remark());
    }

    static QualityFinding hold(String message) {
        return new QualityFinding(message, Effect.hold());
    }
}
