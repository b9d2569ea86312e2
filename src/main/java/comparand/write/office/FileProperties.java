package comparand.write.office;

import comparand.document.Edition;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLDocument;

/** What a file of an office program says of itself, dated by the edition and not by the clock. */
public final class FileProperties {

    private FileProperties() {}

    /** Sets the properties of a workbook, a presentation or a text. */
    public static void set(POIXMLDocument file, Edition edition) {
        var properties = file.getProperties();
        var core = properties.getCoreProperties();
        var stamp = Date.from(edition.date().atStartOfDay(ZoneOffset.UTC).toInstant());
        core.setTitle(edition.title());
        core.setSubjectProperty(edition.subtitle());
        core.setCreator(edition.preparedBy());
        core.setDescription(String.join(" ", edition.marks()));
        core.setCreated(Optional.of(stamp));
        core.setModified(Optional.of(stamp));
        core.setLastModifiedByUser(edition.tool());
        core.getUnderlyingProperties().setLanguageProperty(edition.language());
        properties.getExtendedProperties().setApplication(edition.tool());
    }
}
