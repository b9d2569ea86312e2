package comparand.cite;

import de.undercouch.citeproc.ItemDataProvider;
import de.undercouch.citeproc.csl.CSLItemData;
import de.undercouch.citeproc.csl.CSLItemDataBuilder;
import de.undercouch.citeproc.csl.CSLName;
import de.undercouch.citeproc.csl.CSLNameBuilder;
import de.undercouch.citeproc.csl.CSLType;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Works as the processor wants them. */
final class Works implements ItemDataProvider {

    private final Map<String, CSLItemData> works = new LinkedHashMap<>();

    private final Style style;

    Works(Style style, List<Item> items) {
        this.style = style;
        for (var item : items) {
            if (works.put(item.id(), work(item)) != null) {
                throw new IllegalArgumentException("two works are called " + item.id());
            }
        }
    }

    @Override
    public CSLItemData retrieveItem(String id) {
        var work = works.get(id);
        if (work == null) {
            throw new IllegalArgumentException("there is no work " + id);
        }
        return work;
    }

    @Override
    public Collection<String> getIds() {
        return works.keySet();
    }

    private CSLItemData work(Item item) {
        var work = new CSLItemDataBuilder()
                .id(item.id())
                .type(type(item.type()))
                .title(item.title())
                .author(item.authors().stream().map(Works::name).toArray(CSLName[]::new));
        if (!item.editors().isEmpty()) {
            work.editor(item.editors().stream().map(Works::name).toArray(CSLName[]::new));
        }
        var issued = item.issued();
        switch (issued.size()) {
            case 1 -> work.issued(issued.get(0));
            case 2 -> work.issued(issued.get(0), issued.get(1));
            case 3 -> work.issued(issued.get(0), issued.get(1), issued.get(2));
            default -> {}
        }
        fields(item).forEach((field, text) -> set(work, field, text));
        return work.build();
    }

    /** What the style file leaves to who fills it in. */
    private Map<Item.Field, String> fields(Item item) {
        var fields = new EnumMap<Item.Field, String>(Item.Field.class);
        fields.putAll(item.fields());
        var doi = item.fields().get(Item.Field.DOI);
        var publisher = item.fields().getOrDefault(Item.Field.PUBLISHER, "");
        switch (style) {
            case NUMERIC -> {
                // this style prints addresses and no DOI: one that is all there is to find a work by goes as an address
                if (doi != null && !fields.containsKey(Item.Field.CONTAINER_TITLE)) {
                    fields.putIfAbsent(Item.Field.URL, "https://doi.org/" + doi);
                }
            }
            case APA -> {
                // the publisher is left out where it is the author (Publication Manual, 7th edition, 9.29; from memory)
                if (item.authors().stream().anyMatch(a -> a.literal().equals(publisher))) {
                    fields.remove(Item.Field.PUBLISHER);
                }
            }
            case AMA -> {}
        }
        return fields;
    }

    private CSLType type(String type) {
        if (style == Style.AMA && type.equals("pamphlet")) {
            // the style file has no rule for these and would call them published online
            return CSLType.REPORT;
        }
        return Arrays.stream(CSLType.values())
                .filter(t -> t.toString().equals(type))
                .findFirst()
                .orElse(CSLType.DOCUMENT);
    }

    private static CSLName name(Item.Author author) {
        var name = new CSLNameBuilder();
        return author.literal().isEmpty()
                ? person(name.family(author.family()).given(author.given()), author)
                : name.literal(author.literal()).build();
    }

    private static CSLName person(CSLNameBuilder name, Item.Author author) {
        if (!author.particle().isEmpty()) {
            name.nonDroppingParticle(author.particle());
        }
        if (!author.dropping().isEmpty()) {
            name.droppingParticle(author.dropping());
        }
        if (!author.suffix().isEmpty()) {
            name.suffix(author.suffix());
        }
        return name.build();
    }

    private static void set(CSLItemDataBuilder work, Item.Field field, String text) {
        switch (field) {
            case CONTAINER_TITLE -> work.containerTitle(text);
            case CONTAINER_TITLE_SHORT -> work.containerTitleShort(text);
            case COLLECTION_TITLE -> work.collectionTitle(text);
            case VOLUME -> work.volume(text);
            case ISSUE -> work.issue(text);
            case NUMBER -> work.number(text);
            case PAGE -> work.page(text);
            case PUBLISHER -> work.publisher(text);
            case PUBLISHER_PLACE -> work.publisherPlace(text);
            case EDITION -> work.edition(text);
            case DOI -> work.DOI(text);
            case PMID -> work.PMID(text);
            case PMCID -> work.PMCID(text);
            case ISBN -> work.ISBN(text);
            case URL -> work.URL(text);
        }
    }
}
