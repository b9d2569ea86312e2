package comparand.compose.text;

/**
 * What the application tells the composer of the run itself.
 *
 * @param tool name and version of the tool
 * @param fingerprint SHA-256 over all inputs, in hexadecimal
 */
public record RunFacts(String tool, String fingerprint) {

    public RunFacts {
        if (fingerprint.length() < 8) {
            throw new IllegalArgumentException("a fingerprint has at least eight characters");
        }
    }
}
