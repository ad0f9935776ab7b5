package throwline.window.session;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;

/** Keeper of what is not saved: the journal follows every change, away from the thread that makes it. */
public final class Unsaved {

    private final Journal journal;
    private final Executor writer;

    /**
     * @param journal keeps it
     * @param writer writes the journal, one change after the other
     */
    public Unsaved(Journal journal, Executor writer) {
        this.journal = journal;
        this.writer = writer;
    }

    /** Keeps a document as it stands, or drops it where the disk has it; an example that nobody has touched is no loss. */
    void follow(ModelDocument document) {
        Optional<Path> place = document.place();
        String text = document.text().text();
        boolean keep = document.isUnsaved() && (place.isPresent() || document.canUndo());
        if (keep) {
            writer.execute(() -> journal.keep(place, text));
        } else {
            drop();
        }
    }

    /** Nothing is unsaved any more, or it was given up. */
    void drop() {
        writer.execute(journal::drop);
    }
}
