package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.PrintedNumber;
import java.util.Optional;

/** The picture a value was read from. The picture itself is not kept: it belongs to whoever published it. */
public record PictureRecord(
        @Meaning(
                "SHA-256 of the picture's file, 64 hexadecimal digits: whether a second reader has the same picture before them")
        Located<String> sha256,

        @Meaning("How many times it was enlarged on the screen while it was read; 4 means 400 %")
        Optional<Located<PrintedNumber>> zoom) {}
