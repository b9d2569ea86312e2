package comparand.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.LibraryCopy;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Nothing the tool does opens a socket, asks for the address of a host, or starts another program. */
class NoNetworkTest {

    @TempDir
    Path folder;

    @Test
    void noCommandReachesOut() throws Exception {
        var library = LibraryCopy.of(Path.of("evidence"), folder.resolve("library"));

        var watched = WatchedJava.run(folder, EveryCommand.class, List.of(library.toString(), folder.toString()));

        assertThat(watched.noted()).isEmpty();
        assertThat(watched.said().lines().filter(l -> l.startsWith("did ")))
                .as(watched.said())
                .hasSize(EveryCommand.lines(library, folder).size())
                .allMatch(l -> l.endsWith(l.startsWith("did second compare") ? ": 2" : ": 0"));
    }

    static Stream<String> ways() {
        return ReachingOut.ways().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("ways")
    void eachWayOutWouldBeNoticed(String way) throws Exception {
        var watched = WatchedJava.run(folder, ReachingOut.class, List.of(way));

        assertThat(watched.noted()).as(watched.said()).isNotEmpty();
    }

    @Test
    void afterTheToolHasBegunNoNameHasAnAddress() throws Exception {
        var begun = WatchedJava.unwatched(folder, ReachingOut.class, List.of("begun"));

        // Java says whom it asked: a file that is not there, and not the system
        assertThat(begun.said()).contains("Unable to resolve host name.invalid as hosts file  not found");
    }
}
