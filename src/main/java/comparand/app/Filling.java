package comparand.app;

import comparand.write.rebuild.BuiltFrom;
import comparand.write.rebuild.ContentKey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Fills a new folder with the files of a publication. A file that the build before made from the same, and that is as it was,
 * is taken over from it.
 */
final class Filling {

    private final Path folder;
    private final BuiltFrom before;
    private final String tool;
    private final SortedMap<String, BuiltFrom.Made> made = new TreeMap<>();
    private int unchanged;

    /**
     * A folder to fill.
     *
     * @param before what there is to take over
     * @param tool what tells this program from others, and from its own other versions
     */
    Filling(Path folder, BuiltFrom before, String tool) {
        this.folder = folder;
        this.before = before;
        this.tool = tool;
    }

    /** Writes a file; false if there was no need to. */
    boolean write(OutputFile file) throws IOException {
        var key = ContentKey.of(tool, file.name(), file.from());
        var kept = before.bytes(file.name(), key);
        var path = folder.resolve(file.name());
        Files.createDirectories(Objects.requireNonNull(path.getParent()));
        made.put(
                file.name(),
                new BuiltFrom.Made(
                        key,
                        kept.isPresent()
                                ? written(path, out -> out.write(kept.get()))
                                : written(path, file.writing())));
        unchanged += kept.isPresent() ? 1 : 0;
        return kept.isEmpty();
    }

    private static String written(Path path, OutputFile.Writing writing) throws IOException {
        var disk = new DiskFile(path);
        try (disk) {
            writing.into(disk);
        } catch (RuntimeException e) {
            if (disk.refused().isPresent()) {
                throw disk.refused().get();
            }
            throw e;
        }
        return disk.sha();
    }

    /** How many were taken over. */
    int unchanged() {
        return unchanged;
    }

    /** All files, by their names. */
    SortedMap<String, BuiltFrom.Made> made() {
        return made;
    }
}
