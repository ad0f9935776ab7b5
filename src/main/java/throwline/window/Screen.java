package throwline.window;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javax.swing.SwingUtilities;
import throwline.window.session.Disk;
import throwline.window.session.Settings;
import throwline.window.session.StateFolder;
import throwline.words.Words;

/** The screen of this machine, where it has one and this Java can show windows. */
public final class Screen {

    /** True where a window can be opened. */
    public boolean isThere() {
        try {
            // A Java without windows lacks the classes that a first look at the screen loads.
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (HeadlessException | AWTError | LinkageError e) {
            return false;
        }
    }

    /**
     * Opens the window and waits until it is closed.
     *
     * @param model a model file; empty for what was open last, or an example
     */
    public void open(Optional<Path> model) {
        CountDownLatch closed = new CountDownLatch(1);
        Disk disk = new Disk();
        Path folder = StateFolder.ofProcess();
        Desk desk = desk(folder, disk);
        SwingUtilities.invokeLater(() -> new Program(desk, disk, folder, model, closed::countDown).start());
        try {
            closed.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    static Desk desk(Path folder, Disk disk) {
        Settings settings = new Settings(folder, disk);
        return new Desk(Words.load(), settings, new Look(settings));
    }
}
