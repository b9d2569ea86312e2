package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.FolderContent;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The manual that the packaged tool wrote, in another process than the tests. */
class ManualIT {

    @Test
    @DisplayName("it has the bytes of the one that was tested")
    void same() throws IOException {
        assertThat(FolderContent.of(Path.of("target/comparand/manual")).entries())
                .containsExactlyInAnyOrderEntriesOf(
                        FolderContent.of(WrittenManual.folder()).entries());
    }
}
