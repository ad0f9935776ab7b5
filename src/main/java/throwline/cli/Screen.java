package throwline.cli;

import java.nio.file.Path;
import java.util.Optional;

/** The screen that a window can be opened on. */
public interface Screen {

    /** True where there is one. */
    boolean isThere();

    /**
     * Opens the window and waits until it is closed.
     *
     * @param model a model file; empty for none
     */
    void open(Optional<Path> model);

    /** No screen. */
    static Screen none() {
        return new Screen() {
            @Override
            public boolean isThere() {
                return false;
            }

            @Override
            public void open(Optional<Path> model) {
                throw new IllegalStateException("no screen");
            }
        };
    }
}
