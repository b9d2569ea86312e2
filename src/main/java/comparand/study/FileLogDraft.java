package comparand.study;

import comparand.model.RowLog.Fate;
import comparand.model.RowLog.FileLog;
import comparand.model.RowLog.RowNote;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The log of one file while its rows are read. */
final class FileLogDraft {

    /** Notes beyond these are counted, so that a file of a million faulty rows fits. */
    private static final int MOST = 5000;

    private final String study;
    private final String file;
    private final List<RowNote> notes = new ArrayList<>();
    private int kept;
    private int dropped;
    private int held;
    private int unlisted;

    FileLogDraft(String study, String file) {
        this.study = study;
        this.file = file;
    }

    void kept(int rows) {
        kept += rows;
    }

    void dropped(int rows, int line, String code, String reason) {
        dropped += rows;
        note(new RowNote(Fate.DROPPED, line, code, reason));
    }

    void held(int rows, int line, String code, String reason) {
        held += rows;
        note(new RowNote(Fate.HELD, line, code, reason));
    }

    /** A row that takes part all the same. */
    void remarked(int line, String code, String reason) {
        note(new RowNote(Fate.REMARKED, line, code, reason));
    }

    private void note(RowNote note) {
        if (notes.size() < MOST) {
            notes.add(note);
        } else {
            unlisted++;
        }
    }

    FileLog log() {
        var sorted = notes.stream()
                .sorted(Comparator.comparingInt(RowNote::line).thenComparing(RowNote::code))
                .toList();
        return new FileLog(study, file, kept + dropped + held, kept, dropped, held, sorted, unlisted);
    }
}
