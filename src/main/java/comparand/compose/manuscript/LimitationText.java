package comparand.compose.manuscript;

import comparand.document.Block;
import comparand.document.result.LimitationResult;
import java.util.List;

/** What limits the comparisons, one paragraph each, so that a later run can find and renew it. */
final class LimitationText {

    private final Writing writing;

    LimitationText(Writing writing) {
        this.writing = writing;
    }

    List<Block> blocks(List<LimitationResult> limitations) {
        return limitations.isEmpty()
                ? List.of(writing.prose("lim_none", List.of(writing.say("ms.say.no-limitation"))))
                : limitations.stream().map(this::block).toList();
    }

    private Block block(LimitationResult l) {
        var name = "lim_" + l.kind() + (l.about().isEmpty() ? "" : "_" + l.about());
        var because = l.because().isBlank() ? "" : writing.say("ms.because", "because", l.because());
        return writing.prose(
                name,
                List.of(writing.say(
                        "ms.say.limitation." + l.kind(),
                        "pairs",
                        writing.held("n " + name, String.valueOf(l.pairs())),
                        "of",
                        String.valueOf(l.of()),
                        "name",
                        l.name(),
                        "because",
                        because)));
    }
}
