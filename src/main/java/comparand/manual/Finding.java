package comparand.manual;

import comparand.manual.example.Example;
import java.util.List;

/**
 * What is written of a finding beside what it prints itself.
 *
 * @param code its name
 * @param group the part of the manual it stands in
 * @param checks what it looks for, as a clause
 * @param why why it matters, where the rule itself says so; else empty: the finding says it
 * @param instead what to write instead, in the same way
 * @param examples wrong inputs that give it, the clearest first
 * @param withoutExample why there is none, if there is none
 */
record Finding(
        String code,
        String group,
        String checks,
        String why,
        String instead,
        List<Example> examples,
        String withoutExample) {

    Finding {
        examples = List.copyOf(examples);
        if (checks.isBlank() || examples.isEmpty() == withoutExample.isEmpty()) {
            throw new IllegalArgumentException(code + " says what it checks, and has examples or says why not");
        }
    }

    String path() {
        return FOLDER + code + ".html";
    }

    static final String FOLDER = "findings/";
}
