package comparand.check;

/**
 * What it checks: a cohort that ends before it begins, or names no hospital.
 *
 * <p>Why it matters: reports of the same patients are found by place and time.
 *
 * <p>What to write instead: {@code cohort: {centres: [K, L], from: 2021, to: 2023}}.
 */
final class CohortTime implements Rule {

    @Override
    public String code() {
        return "cohort-time";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.library()
                .sources()
                .values()
                .forEach(source -> source.cohort().ifPresent(c -> {
                    if (c.from().value().earliest().isAfter(c.to().value().latest())) {
                        findings.stop(
                                c.from().span(),
                                "the patients of `%s` were treated from %s to %s"
                                        .formatted(source.id(), c.from().value(), c.to().value()),
                                "reports of the same patients are found by place and time",
                                "write the earlier date under `from:`");
                    }
                    if (c.centres().isEmpty()) {
                        findings.stop(
                                c.from().span(),
                                "the cohort of `%s` names no hospital".formatted(source.id()),
                                "reports of the same patients are found by place and time",
                                "write `centres: [NAME]` with the hospitals as the source names them");
                    }
                }));
    }
}
