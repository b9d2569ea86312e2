package comparand.check;

/**
 * What it checks: a source of a library with invented data whose DOI does not start with 10.5555, the prefix kept
 * for examples (common practice), or that has a PMID.
 *
 * <p>Why it matters: an invented number under a real identifier would be taken for a finding.
 *
 * <p>What to write instead: a DOI starting with 10.5555, or none.
 */
final class InventedReference implements Rule {

    @Override
    public String code() {
        return "invented-reference";
    }

    private static final String EXAMPLES = "10.5555/";

    @Override
    public void check(Context context, Findings findings) {
        boolean invented = context.library().dossiers().values().stream()
                .anyMatch(d -> d.inventedData().value().isYes());
        if (invented) {
            context.library().sources().values().stream()
                    .flatMap(s -> s.reference().doi().stream())
                    .filter(doi -> !doi.value().startsWith(EXAMPLES))
                    .forEach(doi -> findings.stop(
                            doi.span(),
                            "`%s` may belong to a real work, and the data of this library are invented"
                                    .formatted(doi.value()),
                            "an invented number under a real identifier would be taken for a finding",
                            "write a DOI that starts with %s, or leave it out".formatted(EXAMPLES)));
            context.library().sources().values().stream()
                    .flatMap(s -> s.reference().pmid().stream())
                    .forEach(pmid -> findings.stop(
                            pmid.span(),
                            "the number `%s` belongs to a real work, and the data of this library are invented"
                                    .formatted(pmid.value()),
                            "an invented number under a real identifier would be taken for a finding",
                            "leave it out"));
        }
    }
}
