package comparand.check;

import comparand.model.library.PlaceRecord;

/**
 * What it checks: a value without page, table, figure or section.
 *
 * <p>Why it matters: nobody could find it again.
 *
 * <p>What to write instead: {@code place: {page: 7, table: 2, row: 3}}.
 */
final class PlaceMissing implements Rule {

    @Override
    public String code() {
        return "place-missing";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.values()
                .filter(v -> v.value().place().filter(PlaceRecord::canBeFound).isEmpty())
                .forEach(v -> findings.hold(
                        v,
                        v.value().id().span(),
                        "the value `%s` has no place in its source".formatted(v.id()),
                        "a value nobody can find again cannot be verified",
                        "add `place: {page: 7, table: 2, row: 3}`"));
    }
}
