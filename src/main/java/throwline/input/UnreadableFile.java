package throwline.input;

import throwline.words.Message;

/** Ends the reading of a file that no tree can be made of; carries the one problem that is reported. */
final class UnreadableFile extends Exception {

    private static final long serialVersionUID = 1;

    private final FilePlace place;
    private final transient Message note;

    UnreadableFile(FilePlace place, Message note) {
        super(note.code());
        this.place = place;
        this.note = note;
    }

    Problem problem(String file) {
        return new Problem(file, place.line(), place.column(), "", note);
    }
}
