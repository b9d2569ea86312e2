package comparand.model.template;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The templates of a run.
 *
 * @param files what they name beside them, such as fonts and a presentation, by file name
 * @param fingerprints SHA-256 of every file that is not the tool's own, in hexadecimal, by file name
 */
public record Templates(
        TalkTemplate talk,
        CommitteeTemplate committee,
        ManuscriptTemplate manuscript,
        PageTemplate page,
        SortedMap<String, byte[]> files,
        SortedMap<String, String> fingerprints) {

    public Templates {
        files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
        fingerprints = Collections.unmodifiableSortedMap(new TreeMap<>(fingerprints));
    }

    /** A file that a template names. */
    public Optional<byte[]> file(String name) {
        return Optional.ofNullable(files.get(name));
    }
}
