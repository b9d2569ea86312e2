package comparand.model.library;

import java.util.Optional;

/** A sample size as a record states it: {@code 5 units}, or the plain statement that it is not reported. */
public record StatedSize(Optional<SampleSize> size) {

    public static final StatedSize NOT_REPORTED = new StatedSize(Optional.empty());

    @Override
    public String toString() {
        return size.map(SampleSize::toString).orElse(ConditionText.NOT_REPORTED);
    }
}
