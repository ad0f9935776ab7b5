package throwline.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import throwline.words.Message;

/** Collects the problems of one file. */
final class Problems {

    /** More than these help nobody; the first ones are shown. */
    static final int MOST = 50;

    private final String file;
    private final List<Problem> found = new ArrayList<>();
    private boolean more;

    Problems(String file) {
        this.file = file;
    }

    void add(FilePlace place, String keyPath, Message note) {
        if (isFull()) {
            more = true;
        } else {
            found.add(new Problem(file, place.line(), place.column(), keyPath, note));
        }
    }

    /** Problems of another file that this one names. */
    void addAll(List<Problem> others) {
        for (Problem problem : others) {
            if (isFull()) {
                more = true;
            } else {
                found.add(problem);
            }
        }
    }

    void add(Branch where, String code, Object... arguments) {
        add(where.place(), where.path(), Message.of(code, arguments));
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    /** True where further problems are no longer listed. */
    boolean isFull() {
        return found.size() >= MOST;
    }

    /** In the order of the file. */
    List<Problem> list() {
        List<Problem> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
        if (more) {
            sorted.add(new Problem(file, 0, 0, "", Message.of("input.more")));
        }
        return List.copyOf(sorted);
    }
}
