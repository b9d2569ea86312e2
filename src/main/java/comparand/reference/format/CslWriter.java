package comparand.reference.format;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.node.ObjectNode;
import comparand.reference.Field;
import comparand.reference.Kept;
import comparand.reference.Name;
import comparand.reference.Reference;
import java.util.List;
import java.util.SortedMap;

/** References as CSL-JSON, two blanks a level, line feeds everywhere. */
final class CslWriter {

    private static final DefaultPrettyPrinter PRINTER = new DefaultPrettyPrinter()
            .withObjectIndenter(new DefaultIndenter("  ", "\n"))
            .withArrayIndenter(new DefaultIndenter("  ", "\n"));

    private CslWriter() {}

    static String text(SortedMap<String, Reference> references) {
        var list = CslReader.JSON.createArrayNode();
        references.forEach((id, reference) -> list.add(item(id, reference)));
        try {
            return CslReader.JSON.writer(PRINTER).writeValueAsString(list) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of texts can be written", e);
        }
    }

    private static ObjectNode item(String id, Reference reference) {
        var item = CslReader.JSON.createObjectNode();
        item.put("id", id).put("type", reference.type()).put("title", reference.title());
        names(item, "author", reference.authors());
        names(item, "editor", reference.editors());
        reference.issued().ifPresent(d -> item.set("issued", CslDates.json(d)));
        for (var field : Field.values()) {
            reference.field(field).ifPresent(t -> item.put(field.key(), t));
        }
        reference.kept().stream()
                .filter(k -> k.format().equals(ReferenceFormat.CSL_JSON.word()))
                .forEach(k -> kept(item, k));
        reference.notice().ifPresent(n -> item.put("note", StatusNote.of(n)));
        return item;
    }

    private static void names(ObjectNode item, String field, List<Name> names) {
        if (!names.isEmpty()) {
            var list = item.putArray(field);
            names.forEach(n -> list.add(CslNames.json(n)));
        }
    }

    /** Given back as it was: a date in the place of the one that was read from it. */
    private static void kept(ObjectNode item, Kept kept) {
        var text = kept.texts().get(0);
        if (!kept.tag().endsWith(CslReader.AS_JSON)) {
            if (!kept.tag().equals("type") && !item.has(kept.tag())) {
                item.put(kept.tag(), text);
            }
            return;
        }
        var name = kept.tag().substring(0, kept.tag().length() - CslReader.AS_JSON.length());
        if (name.isBlank() || (item.has(name) && !name.equals("issued"))) {
            return;
        }
        try {
            item.set(name, CslReader.JSON.readTree(text));
        } catch (JsonProcessingException e) {
            // somebody has changed it in the record: it is text now
            item.put(name, text);
        }
    }
}
