package throwline.validation;

import throwline.words.Message;

/** A case file that cannot be run; says in one sentence why. */
public final class UnreadableCase extends Exception {

    private static final long serialVersionUID = 1;

    private final transient Message note;

    UnreadableCase(Message note) {
        super(note.code() + " " + note.arguments());
        this.note = note;
    }

    /** What is wrong: file, line and column, what is allowed. */
    public Message note() {
        return note;
    }
}
