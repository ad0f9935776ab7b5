package throwline.window.session;

import java.util.ArrayDeque;
import java.util.Deque;

/** A text with all its changes, back to the first and forth again, each kept as what it replaced. */
public final class TextHistory {

    private final Deque<Change> undone = new ArrayDeque<>();
    private final Deque<Change> done = new ArrayDeque<>();
    private String text;

    /** This text, not changed yet. */
    public TextHistory(String text) {
        this.text = text;
    }

    /**
     * A change.
     *
     * @param at where it begins, in characters
     * @param old letters before
     * @param put letters after
     */
    private record Change(int at, String old, String put) {}

    /** The text as it stands. */
    public String text() {
        return text;
    }

    /** Makes it another text; one step for {@link #undo}. */
    public void change(String other) {
        if (other.equals(text)) {
            return;
        }
        int most = Math.min(text.length(), other.length());
        int start = 0;
        while (start < most && text.charAt(start) == other.charAt(start)) {
            start++;
        }
        int end = 0;
        while (end < most - start && text.charAt(text.length() - 1 - end) == other.charAt(other.length() - 1 - end)) {
            end++;
        }
        done.push(new Change(
                start, text.substring(start, text.length() - end), other.substring(start, other.length() - end)));
        undone.clear();
        text = other;
    }

    /** True where there is a change to take back. */
    public boolean canUndo() {
        return !done.isEmpty();
    }

    /** True where there is a change to make again. */
    public boolean canRedo() {
        return !undone.isEmpty();
    }

    /** Takes back the last change; nothing where there is none. */
    public void undo() {
        if (canUndo()) {
            Change change = done.pop();
            text = replaced(change.at(), change.put(), change.old());
            undone.push(change);
        }
    }

    /** Makes the last change again that was taken back; nothing where there is none. */
    public void redo() {
        if (canRedo()) {
            Change change = undone.pop();
            text = replaced(change.at(), change.old(), change.put());
            done.push(change);
        }
    }

    private String replaced(int at, String old, String put) {
        return text.substring(0, at) + put + text.substring(at + old.length());
    }
}
