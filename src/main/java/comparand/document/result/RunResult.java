package comparand.document.result;

import java.util.List;
import java.util.Optional;

/** What was run. */
public record RunResult(
        @Says("Name of the dossier") String dossier,
        @Says("Title printed on every output") String title,
        @Says("The question") String question,
        @Says("The decision it serves") String decision,
        @Says("The day question and margins were fixed") String fixed,
        @Says("The day the first local results were seen") Optional<String> firstSeen,
        @Says("The day the report speaks of") String asOf,
        @Says("Who prepared it") String preparedBy,
        @Says("draft or released") String state,

        @Says("Whether devices, people and numbers are invented")
        boolean inventedData,

        @Says("The device the others are compared with") String presentDevice,
        @Says("Name and version of the tool") String tool,

        @Says("SHA-256 over the names and fingerprints of all inputs")
        String fingerprint,

        @Says("Every file read, with its SHA-256") List<InputResult> inputs,

        @Says("Level of all intervals that do not name another")
        double level,

        @Says("Level of the narrower intervals, of which two one-sided tests at 5 % are made")
        double narrowLevel,

        @Says("Share of units or cases that a tolerance limit is for")
        double toleranceShare,

        @Says("Number of comparisons the adjusted p values allow for")
        int familySize,

        @Says("Language of all sentences, such as en") Optional<String> language) {

    /** One file that was read. */
    public record InputResult(
            @Says("File name within the library") String file,
            @Says("SHA-256 in hexadecimal") String sha256,

            @Says("For a file of a folder laid over the library: what findings call it")
            Optional<String> laidOver) {}
}
