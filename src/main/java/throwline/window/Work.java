package throwline.window;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Long work beside the window: the newest is shown, what was stopped or came too late is dropped. For the screen's thread. */
final class Work {

    private Optional<Thread> running = Optional.empty();

    /**
     * Begins work; what ran before is dropped.
     *
     * @param work done on a thread of its own
     * @param done takes what it gives, on the screen's thread
     * @param failed takes a fault, on the screen's thread
     */
    <T> void begin(Callable<T> work, Consumer<T> done, Consumer<Throwable> failed) {
        stop();
        Thread thread = new Thread(() -> run(work, done, failed), "long work");
        thread.setDaemon(true);
        running = Optional.of(thread);
        thread.start();
    }

    private <T> void run(Callable<T> work, Consumer<T> done, Consumer<Throwable> failed) {
        Thread own = Thread.currentThread();
        try {
            T found = work.call();
            SwingUtilities.invokeLater(() -> ifNewest(own, () -> done.accept(found)));
        } catch (Exception | LinkageError | OutOfMemoryError fault) {
            SwingUtilities.invokeLater(() -> ifNewest(own, () -> failed.accept(fault)));
        }
    }

    private void ifNewest(Thread own, Runnable show) {
        if (running.filter(thread -> thread.equals(own)).isPresent()) {
            running = Optional.empty();
            show.run();
        }
    }

    /** Drops what runs; its answer is not shown. */
    void stop() {
        running.ifPresent(Thread::interrupt);
        running = Optional.empty();
    }

    boolean isRunning() {
        return running.isPresent();
    }
}
