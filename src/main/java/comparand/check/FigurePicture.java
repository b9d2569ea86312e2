package comparand.check;

import java.util.regex.Pattern;

/**
 * What it checks: a reading from a figure without the fingerprint of its picture, or with one that is none, and an enlargement
 * that is none.
 *
 * <p>Why it matters: picture points mean nothing without the picture they were counted in.
 *
 * <p>What to write instead: {@code picture: {sha256: ..., zoom: 4}}.
 */
final class FigurePicture implements Rule {

    @Override
    public String code() {
        return "figure-picture";
    }

    private static final Pattern SHA256 = Pattern.compile("[0-9a-f]{64}");

    @Override
    public void check(Context library, Findings findings) {
        library.values()
                .forEach(v -> v.value().readFromFigure().ifPresent(reading -> {
                    if (reading.picture().isEmpty()) {
                        findings.note(
                                reading.scale().span(),
                                "the value `%s` does not say which picture it was read from".formatted(v.id()),
                                "picture points can be found again in the same picture only",
                                "add `picture: {sha256: ..., zoom: 4}`; `sha256sum FILE` or `certutil -hashfile FILE SHA256`"
                                        + " gives the fingerprint");
                    }
                    reading.picture().ifPresent(picture -> {
                        if (!SHA256.matcher(picture.sha256().value()).matches()) {
                            findings.stop(
                                    picture.sha256().span(),
                                    "`%s` is not the SHA-256 of a file"
                                            .formatted(picture.sha256().value()),
                                    "a second reader could not tell whether the picture is the same",
                                    "write its 64 digits from 0 to 9 and a to f");
                        }
                        picture.zoom()
                                .filter(z -> z.value().value().signum() <= 0)
                                .ifPresent(z -> findings.stop(
                                        z.span(),
                                        "a picture is not enlarged %s times".formatted(z.value()),
                                        "the enlargement shows how finely it was read",
                                        "write how many times it was enlarged, such as 4"));
                    });
                }));
    }
}
