package comparand.reference;

/** Texts of a reference beside its title, by their names in CSL-JSON. */
public enum Field {
    CONTAINER_TITLE("container-title"),
    CONTAINER_TITLE_SHORT("container-title-short"),
    COLLECTION_TITLE("collection-title"),
    VOLUME("volume"),
    ISSUE("issue"),
    NUMBER("number"),
    PAGE("page"),
    EDITION("edition"),
    PUBLISHER("publisher"),
    PUBLISHER_PLACE("publisher-place"),
    ISSN("ISSN"),
    ISBN("ISBN"),
    DOI("DOI"),
    PMID("PMID"),
    PMCID("PMCID"),
    URL("URL"),
    LANGUAGE("language");

    private final String key;

    Field(String key) {
        this.key = key;
    }

    /** Its name in CSL-JSON, which is its key in a record too. */
    public String key() {
        return key;
    }
}
