package comparand.study.quality;

import java.util.Optional;
import java.util.TreeSet;

/**
 * Checks whether somebody wrote a remark beside the numbers. It matters because words such as an analyser switched off,
 * a calculated saturation or a sample taken late explain numbers that no rule doubts. The row is kept and pointed out;
 * the words are not repeated, since they may name a person. What to do: read them.
 */
final class RemarkStands implements QualityRule {

    @Override
    public String code() {
        return "row-has-remark";
    }

    @Override
    public String why() {
        return "a remark may say that a number is not what its column says, and no rule reads it";
    }

    @Override
    public String fix() {
        return "read the remarks; list a row under `dropped:` with a reason, or map what they say to a column of its own";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        var remarks = row.remarks();
        return remarks.isEmpty()
                ? Optional.empty()
                : Optional.of(QualityFinding.remark(
                        "a remark stands in `%s` of this row".formatted(String.join("`, `", new TreeSet<>(remarks)))));
    }
}
