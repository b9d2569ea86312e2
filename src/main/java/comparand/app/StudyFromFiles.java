package comparand.app;

import comparand.metric.Catalogue;
import comparand.model.UnreadableRows;
import comparand.read.LibraryReader;
import comparand.read.proposal.StudyProposal;
import comparand.write.whole.WholeFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A new study in a library: copies of raw files with the mapping proposed for them. */
final class StudyFromFiles {

    private final String id;
    private final Path study;
    private final List<Path> files;
    private final Path library;

    /**
     * A study that is to be written.
     *
     * @param name of the study; else it is named after the first file
     */
    StudyFromFiles(Path library, Optional<String> name, List<Path> files) {
        this.library = library;
        this.id = name.orElseGet(() -> StudyProposal.nameFor(files.get(0)));
        this.study = library.resolve("studies").resolve(id);
        this.files = List.copyOf(files);
    }

    /** The folder it is written to. */
    Path folder() {
        return study;
    }

    /** Why it cannot be written, as a sentence; empty if nothing stands in the way. */
    Optional<String> obstacle() {
        if (!id.matches("[a-z0-9]++(?:-[a-z0-9]++)*+")) {
            return Optional.of(
                    "`%s` is no name for a study: use small letters, digits and single hyphens.".formatted(id));
        }
        if (Files.exists(study)) {
            return Optional.of("`%s` is there already; give the study another name with --study.".formatted(study));
        }
        var names = new HashSet<String>();
        for (var file : files) {
            if (!Files.isRegularFile(file)) {
                return Optional.of("There is no file `%s`.".formatted(file));
            }
            if (!names.add(file.getFileName().toString())) {
                return Optional.of("Two files are called `%s`; rename one of them.".formatted(file.getFileName()));
            }
        }
        return Optional.empty();
    }

    /**
     * The proposed record.
     *
     * @throws UnreadableRows if a file holds no table
     */
    String proposal() throws IOException {
        return StudyProposal.of(id, files, catalogue());
    }

    /** With the metrics the library declares, if it can be read. */
    private Catalogue catalogue() {
        return Files.isDirectory(library)
                ? LibraryReader.read(library).fold((whole, notes) -> whole.catalogue(), stops -> Catalogue.shipped())
                : Catalogue.shipped();
    }

    /** The record, and copies of the files beside it, as they are to be written into the library. */
    List<WholeFiles.Change> changes(String proposal) {
        var folder = "studies/" + id + "/";
        return Stream.concat(
                        files.stream()
                                .map(f -> new WholeFiles.Change(
                                        folder + f.getFileName(), Optional.empty(), WholeFiles.Content.copyOf(f))),
                        Stream.of(new WholeFiles.Change(
                                folder + "study.yaml", Optional.empty(), WholeFiles.Content.of(proposal))))
                .toList();
    }
}
