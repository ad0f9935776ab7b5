package throwline.window.session;

import java.util.Optional;
import java.util.function.Consumer;

/** A thread that always works on the newest question; those that came before and were not begun are dropped. */
final class NewestWins<Q> implements AutoCloseable {

    private final Object lock = new Object();
    private final Consumer<Q> work;
    private final long rest;
    private final Thread thread;
    private Optional<Q> waiting = Optional.empty();
    private boolean closed;

    /**
     * @param name of the thread
     * @param rest a question is begun once no newer one has come for so long, ms
     * @param work what is done with a question; it must not throw
     */
    NewestWins(String name, long rest, Consumer<Q> work) {
        this.work = work;
        this.rest = rest;
        thread = new Thread(this::run, name);
        thread.setDaemon(true);
        thread.start();
    }

    /** Asks; never waits. */
    void ask(Q question) {
        synchronized (lock) {
            waiting = Optional.of(question);
            lock.notifyAll();
        }
    }

    /** True where a newer question waits. */
    boolean isOverdue() {
        synchronized (lock) {
            return waiting.isPresent();
        }
    }

    @Override
    public void close() {
        synchronized (lock) {
            closed = true;
            lock.notifyAll();
        }
    }

    private void run() {
        for (Optional<Q> next = next(); next.isPresent(); next = next()) {
            work.accept(next.get());
        }
    }

    /** The newest question; empty once it is closed. */
    private Optional<Q> next() {
        synchronized (lock) {
            try {
                while (waiting.isEmpty() && !closed) {
                    lock.wait();
                }
                for (Optional<Q> last = Optional.empty(); rest > 0 && !closed && !last.equals(waiting); ) {
                    last = waiting;
                    lock.wait(rest);
                }
            } catch (InterruptedException e) {
                closed = true;
            }
            Optional<Q> taken = closed ? Optional.empty() : waiting;
            waiting = Optional.empty();
            return taken;
        }
    }
}
