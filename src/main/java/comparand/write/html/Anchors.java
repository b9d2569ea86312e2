package comparand.write.html;

import comparand.document.Block;
import comparand.document.Document;
import comparand.document.Section;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Where links lead: the ids of sections and ladders, by their names. */
final class Anchors {

    private final Map<String, String> sections = new HashMap<>();
    private final Set<String> ladders = new HashSet<>();

    Anchors(Document document) {
        var taken = new HashSet<String>();
        for (var section : document.sections()) {
            var id = slug(section.name());
            for (int i = 2; !taken.add(id); i++) {
                id = slug(section.name()) + "-" + i;
            }
            if (sections.put(section.name(), id) != null) {
                throw new IllegalArgumentException("two sections are named " + section.name());
            }
            section.blocks().stream()
                    .filter(Block.Ladder.class::isInstance)
                    .map(Block.Ladder.class::cast)
                    .forEach(this::add);
        }
    }

    private void add(Block.Ladder ladder) {
        if (!ladders.add(ladder.name())) {
            throw new IllegalArgumentException("two ladders are named " + ladder.name());
        }
    }

    /** A name as part of an id: lower case, anything but letters and digits of ASCII a hyphen. */
    private static String slug(String name) {
        return "s-" + name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    String of(Section section) {
        return of(section.name()).orElseThrow();
    }

    static String of(Block.Ladder ladder) {
        return "v-" + ladder.name();
    }

    static String of(Block.Table table) {
        return "t-" + table.id();
    }

    /** The id of what is named; absent where the document has no such part. */
    Optional<String> of(String name) {
        var section = Optional.ofNullable(sections.get(name));
        return section.isPresent() || !ladders.contains(name) ? section : Optional.of("v-" + name);
    }
}
