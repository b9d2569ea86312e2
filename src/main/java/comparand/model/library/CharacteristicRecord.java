package comparand.model.library;

import comparand.diag.Located;

/** A property of a device in words, with its place in a source. */
public record CharacteristicRecord(
        @Meaning("Name of the property, the same words for every device")
        Located<String> name,

        @Meaning("technical, biological or clinical") Located<Block> block,

        @Meaning("The property, in words or figures; or not reported")
        Located<String> is,

        @Meaning("Where it is stated") SourcedRecord from) {}
