package comparand.write.html;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import comparand.document.exploration.Exploration;
import org.jspecify.annotations.Nullable;

/** What scripts are given, as JSON in which no text can end a script element: keys in the order of the records, absent ones left out. */
final class ExplorationJson {

    private static final ObjectWriter WRITER = writer();

    private ExplorationJson() {}

    static String of(Exploration exploration) {
        try {
            return WRITER.writeValueAsString(exploration);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("texts, numbers and lists of them can be written", e);
        }
    }

    private static ObjectWriter writer() {
        return JsonMapper.builder()
                .addModule(new Jdk8Module())
                .defaultPropertyInclusion(
                        JsonInclude.Value.construct(JsonInclude.Include.NON_ABSENT, JsonInclude.Include.NON_ABSENT))
                .build()
                .writer(new WithinScript());
    }

    /** Escapes what would begin a tag or comment, and the two line ends that scripts once did not allow in strings. */
    private static final class WithinScript extends CharacterEscapes {

        private static final long serialVersionUID = 1L;

        @Override
        public int[] getEscapeCodesForAscii() {
            var codes = standardAsciiEscapesForJSON();
            codes['<'] = ESCAPE_CUSTOM;
            return codes;
        }

        @Override
        public @Nullable SerializableString getEscapeSequence(int c) {
            return switch (c) {
                case '<' -> new SerializedString("\\u003c");
                case '\u2028' -> new SerializedString("\\u2028");
                case '\u2029' -> new SerializedString("\\u2029");
                default -> null;
            };
        }
    }
}
