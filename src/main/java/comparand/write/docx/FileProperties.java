package comparand.write.docx;

import comparand.document.Edition;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Optional;
import org.apache.poi.xwpf.usermodel.XWPFDocument;

/** What a file says of itself, dated by the edition and not by the clock. */
final class FileProperties {

    private FileProperties() {}

    static void set(XWPFDocument file, Edition edition) {
        var properties = file.getProperties();
        var core = properties.getCoreProperties();
        var stamp = Date.from(edition.date().atStartOfDay(ZoneOffset.UTC).toInstant());
        core.setTitle(edition.title());
        core.setSubjectProperty(edition.subtitle());
        core.setCreator(edition.preparedBy());
        core.setDescription(String.join(" ", edition.marks()));
        core.setKeywords(edition.fingerprint());
        core.setCreated(Optional.of(stamp));
        core.setModified(Optional.of(stamp));
        core.setLastModifiedByUser(edition.tool());
        core.getUnderlyingProperties().setLanguageProperty(edition.language());
        properties.getExtendedProperties().setApplication(edition.tool());
    }
}
