package comparand.read.yaml;

/**
 * Where in a record the binder is, for its sentences.
 *
 * @param name the key, or the kind of record
 * @param phrase as the object of a sentence: "this source", "`status`", "this entry of `values`"
 */
record Where(String name, String phrase, boolean mayBeLeftOut) {

    static Where record(String kind) {
        return new Where(kind, "this " + kind, false);
    }

    static Where key(String key, boolean mayBeLeftOut) {
        return new Where(key, "`" + key + "`", mayBeLeftOut);
    }

    /** One of the entries of a list under this key. */
    Where entry() {
        return new Where(name, "this entry of `" + name + "`", false);
    }
}
