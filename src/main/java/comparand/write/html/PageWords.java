package comparand.write.html;

import java.util.Map;

/** The few words of the page that stand in no section of the document. */
final class PageWords {

    private final Map<String, String> words;

    PageWords(Map<String, String> words) {
        this.words = words;
    }

    String say(String key) {
        var text = words.get(key);
        if (text == null) {
            throw new IllegalArgumentException("the page has no words for " + key);
        }
        return text;
    }

    /** The same with a place filled in. */
    String say(String key, String place, String with) {
        return say(key).replace("{" + place + "}", with);
    }
}
