package comparand.app;

import comparand.write.office.NoClock;
import comparand.write.rebuild.BuiltFrom;
import comparand.write.rebuild.ContentKey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;

/**
 * Fills a new folder with the files of a publication. A file that the build before made from the same, and that is as it was,
 * is taken over from it. Files are written side by side.
 */
final class Filling {

    private final Path folder;
    private final BuiltFrom before;
    private final String tool;
    private final SortedMap<String, BuiltFrom.Made> made = new TreeMap<>();

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

    /** Writes files; the names of those there was a need to write. */
    List<String> write(List<OutputFile> files) throws IOException {
        var works =
                files.stream().<Callable<Filled>>map(file -> () -> filled(file)).toList();
        var filled = new ArrayList<Filled>();
        NoClock.during(() -> filled.addAll(SideBySide.all(works)));
        filled.forEach(file -> made.put(file.name(), file.made()));
        return filled.stream().filter(Filled::isWritten).map(Filled::name).toList();
    }

    private record Filled(String name, BuiltFrom.Made made, boolean isWritten) {}

    private Filled filled(OutputFile file) throws IOException {
        var key = ContentKey.of(tool, file.name(), file.from());
        var kept = before.bytes(file.name(), key);
        var path = folder.resolve(file.name());
        Files.createDirectories(Objects.requireNonNull(path.getParent()));
        var sha = kept.isPresent() ? written(path, out -> out.write(kept.get())) : written(path, file.writing());
        return new Filled(file.name(), new BuiltFrom.Made(key, sha), kept.isEmpty());
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

    /** All files, by their names. */
    SortedMap<String, BuiltFrom.Made> made() {
        return made;
    }
}
