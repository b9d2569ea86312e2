package comparand.manual;

import java.util.List;

/**
 * A command as its help has it.
 *
 * @param name as typed, {@code intake make}; empty for the tool itself
 * @param synopsis the line of usage
 * @param description paragraphs
 * @param parameters what is given by its place
 * @param options what is given by name
 */
public record CommandText(
        String name, String synopsis, List<String> description, List<Choice> parameters, List<Choice> options) {

    public CommandText {
        description = List.copyOf(description);
        parameters = List.copyOf(parameters);
        options = List.copyOf(options);
    }

    /**
     * A parameter or an option.
     *
     * @param names as typed, with what follows
     */
    public record Choice(String names, String meaning) {}
}
