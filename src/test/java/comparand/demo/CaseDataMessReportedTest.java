package comparand.demo;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import comparand.check.Checker;
import comparand.demo.CaseDataMess.Injected;
import comparand.diag.Diagnostic;
import comparand.model.RowLog;
import comparand.model.RowLog.FileLog;
import comparand.read.LibraryReader;
import comparand.study.LocalStudies;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Whatever is spoilt in the hospitals' files is told: each row, heading or sheet is named by a finding, or by what is logged
 * of the row, that was not there before. No kind is left out.
 */
class CaseDataMessReportedTest {

    private static final String STUDY = "studies/three-hospitals/";
    private static final Pattern LISTED = Pattern.compile("lines? (\\d+(?:, \\d+)*)");

    /** What is said of one place. */
    private record Word(String code, String file, String sheet, Set<Integer> lines, String text) {}

    /** What a run says, and its logs unless it was stopped. */
    private record Said(Set<Word> words, List<FileLog> logs) {}

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource
    void everythingThatIsSpoiltIsNamed(CaseDataMessKind kind) throws IOException {
        var clean = said(library("clean"));
        var library = library("spoilt");
        var injected = CaseDataMess.inject(library.resolve(STUDY), Set.of(kind));
        var spoilt = said(library);
        var newWords = new HashSet<>(spoilt.words());
        newWords.removeAll(clean.words());
        var unused = new HashSet<Word>();
        clean.logs().forEach(f -> unused.addAll(words(f, RowLog.Fate.DROPPED)));

        assertThat(clean.logs()).isNotEmpty();
        // nobody looks at the samples of a case that was left out
        var used = injected.stream()
                .filter(i -> unused.stream().noneMatch(w -> isOf(w, i)))
                .toList();
        assertThat(used)
                .isNotEmpty()
                .allSatisfy(i -> assertThat(newWords).as(i.toString()).anyMatch(w -> tells(w, i)));
        everyRowIsAccountedFor(new CaseDataRead(library.resolve(STUDY)), spoilt.logs());
    }

    /** The codes under which a kind of fault is told. */
    private static Set<String> codes(CaseDataMessKind kind) {
        return switch (kind) {
            case HEADING_RENAMED -> Set.of("column-unmapped");
            case DEVICE_CHANGED -> Set.of("device-changed");
            case TWO_PATIENTS_ONE_CODE -> Set.of("member-described-twice");
            case HIDDEN_CORRECTION -> Set.of("sheet-hidden");
            case CODE_RETYPED -> Set.of("member-not-described");
            case PAST_MIDNIGHT -> Set.of("minutes-backwards");
            case DECIMAL_SLIP, FRACTION_AS_PER_CENT -> Set.of("input-impossible");
            case SIDES_SWAPPED -> Set.of("samples-swapped", "carbon-dioxide-not-lowered");
            case PRESSURES_SWAPPED -> Set.of("pressures-swapped");
            case AIR_IN_SAMPLE -> Set.of("saturation-disagrees");
            case ABOVE_RANGE, FREE_TEXT -> Set.of("number-unreadable");
            case SIGN_LOST -> Set.of("base-excess-disagrees");
            case SATURATION_CALCULATED -> Set.of("row-has-remark");
            case ROW_TWICE -> Set.of("row-twice");
            case NO_FLOW -> Set.of("no-blood-flow");
            case TEMPERATURE_UNSETTLED -> Set.of("outlet-beyond-water");
            case NO_VENOUS_SAMPLE, NO_WATER_TEMPERATURE -> Set.of("value-missing");
        };
    }

    private static boolean tells(Word word, Injected injected) {
        return codes(injected.kind()).contains(word.code()) && isOf(word, injected);
    }

    /** Of a hidden sheet it is said that it is there, not what stands in it. */
    private static boolean isOf(Word word, Injected injected) {
        boolean there = injected.kind() == CaseDataMessKind.HIDDEN_CORRECTION
                || word.lines().contains(injected.line());
        return there && word.file().equals(injected.file()) && word.sheet().equals(injected.sheet());
    }

    /** Counted by other code than that which logs. */
    private static void everyRowIsAccountedFor(CaseDataRead files, List<FileLog> logs) {
        assertThat(logs).allSatisfy(log -> {
            if (log.file().startsWith(STUDY)) {
                var name = log.file().substring(STUDY.length());
                var rows = name.contains(", ") ? files.sheet(name.split(", ", 2)[1]) : files.csv(name);
                assertThat(log.kept() + log.dropped() + log.held()).as(name).isEqualTo(rows.size());
                assertThat(log.unlisted()).isZero();
            }
        });
    }

    private Path library(String name) throws IOException {
        return LibraryCopy.of(Path.of("evidence"), folder.resolve(name));
    }

    private static Said said(Path library) {
        return LibraryReader.read(library)
                .then(l -> Checker.check(l, requireNonNull(l.dossiers().get("small-oxygenators"))))
                .then(LocalStudies::compute)
                .fold(
                        (local, findings) -> {
                            var words = words(findings);
                            local.log()
                                    .files()
                                    .forEach(f -> Stream.of(RowLog.Fate.values())
                                            .forEach(fate -> words.addAll(words(f, fate))));
                            return new Said(words, local.log().files());
                        },
                        findings -> new Said(words(findings), List.of()));
    }

    private static Set<Word> words(List<Diagnostic> findings) {
        var words = new HashSet<Word>();
        for (var f : findings) {
            var lines = new TreeSet<Integer>();
            lines.add(f.span().line());
            var listed = LISTED.matcher(f.message());
            while (listed.find()) {
                Stream.of(listed.group(1).split(", ", -1))
                        .map(Integer::parseInt)
                        .forEach(lines::add);
            }
            words.add(new Word(f.code(), file(f.span().file()), f.span().sheet(), lines, f.message()));
        }
        return words;
    }

    private static List<Word> words(FileLog log, RowLog.Fate fate) {
        var name = file(log.file()).split(", ", 2);
        var words = new ArrayList<Word>();
        log.notes().stream()
                .filter(n -> n.fate() == fate)
                .forEach(n -> words.add(
                        new Word(n.code(), name[0], name.length > 1 ? name[1] : "", Set.of(n.line()), n.reason())));
        return words;
    }

    private static String file(String path) {
        return path.startsWith(STUDY) ? path.substring(STUDY.length()) : path;
    }
}
