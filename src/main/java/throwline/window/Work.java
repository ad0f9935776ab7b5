package throwline.window;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import throwline.section.MeasuredSections;
import throwline.section.SectionAerodynamics;
import throwline.section.StoppableSections;

/**
 * Long work beside the window: the newest is shown; what is stopped ends soon, and nothing of it is shown. For the screen's
 * thread.
 */
final class Work {

    private Optional<Running> running = Optional.empty();

    /**
     * Long work.
     *
     * @param <T> what it gives
     */
    interface Task<T> {
        /**
         * Does it.
         *
         * @param sections of which no more are made once it is stopped, which ends it
         */
        T run(SectionAerodynamics sections) throws Exception;
    }

    /** Work that goes on. */
    private record Running(Thread thread, AtomicBoolean stopped) {}

    /**
     * Begins work; what ran before is stopped.
     *
     * @param work done on a thread of its own
     * @param done takes what it gives, on the screen's thread
     * @param failed takes a fault, on the screen's thread
     */
    <T> void begin(Task<T> work, Consumer<T> done, Consumer<Throwable> failed) {
        stop();
        AtomicBoolean stopped = new AtomicBoolean();
        SectionAerodynamics sections = new StoppableSections(new MeasuredSections(), stopped::get);
        Thread thread = new Thread(() -> run(work, sections, done, failed), "long work");
        thread.setDaemon(true);
        running = Optional.of(new Running(thread, stopped));
        thread.start();
    }

    private <T> void run(Task<T> work, SectionAerodynamics sections, Consumer<T> done, Consumer<Throwable> failed) {
        Thread own = Thread.currentThread();
        try {
            T found = work.run(sections);
            SwingUtilities.invokeLater(() -> ifNewest(own, () -> done.accept(found)));
        } catch (Exception | LinkageError | OutOfMemoryError fault) {
            SwingUtilities.invokeLater(() -> ifNewest(own, () -> failed.accept(fault)));
        }
    }

    private void ifNewest(Thread own, Runnable show) {
        if (running.filter(each -> each.thread().equals(own)).isPresent()) {
            running = Optional.empty();
            show.run();
        }
    }

    /** Ends what runs; nothing of it is shown. */
    void stop() {
        running.ifPresent(each -> {
            each.stopped().set(true);
            each.thread().interrupt();
        });
        running = Optional.empty();
    }

    boolean isRunning() {
        return running.isPresent();
    }
}
