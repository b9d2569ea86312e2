package comparand.model.library;

import java.util.List;

/** A value that may be written alone or as a list. */
public record OneOrMore<V>(List<V> list) {

    public OneOrMore {
        list = List.copyOf(list);
        if (list.isEmpty()) {
            throw new IllegalArgumentException("one or more, got none");
        }
    }
}
