package throwline.window;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import throwline.window.session.Disk;
import throwline.window.session.Session;

/** A real window on a real or a virtual screen, and a hand and keys that work it. */
final class OpenWindow {

    private static final long PATIENCE = 60_000;

    final List<HandView> shown = new CopyOnWriteArrayList<>();
    final List<Throwable> faults = new CopyOnWriteArrayList<>();
    private final CountDownLatch closed = new CountDownLatch(1);
    private final Robot robot;
    private final Program program;

    OpenWindow(Path folder, Path model) {
        this(folder, Optional.of(model));
    }

    /** The window as it starts with a model, or without one. */
    OpenWindow(Path folder, Optional<Path> model) {
        Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> faults.add(fault));
        Disk disk = new Disk();
        program = on(() -> new Program(Screen.desk(folder, disk), disk, folder, model, closed::countDown));
        on(() -> {
            program.window().onShown(shown::add);
            program.start();
            return true;
        });
        try {
            robot = new Robot();
        } catch (java.awt.AWTException e) {
            throw new IllegalStateException(e);
        }
        robot.setAutoDelay(4);
        until(() -> shown.stream().anyMatch(HandView::finished));
        robot.waitForIdle();
    }

    /** Runs something on the screen's thread. */
    static <T> T on(Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        SwingUtilities.invokeLater(task);
        try {
            return task.get(PATIENCE, TimeUnit.MILLISECONDS);
        } catch (InterruptedException | ExecutionException | java.util.concurrent.TimeoutException e) {
            throw new IllegalStateException(e);
        }
    }

    static void until(Callable<Boolean> holds) {
        long end = System.nanoTime() + PATIENCE * 1_000_000;
        while (!on(holds)) {
            if (System.nanoTime() > end) {
                throw new AssertionError("it does not come");
            }
            sleep(10);
        }
    }

    static void sleep(long milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    Program program() {
        return program;
    }

    Session session() {
        return program.session().orElseThrow();
    }

    Robot robot() {
        return robot;
    }

    /** A component by its name. */
    JComponent find(String name) {
        return on(() -> all(program.window().frame().getRootPane()).stream()
                .filter(each -> name.equals(each.getName()) && each.isShowing())
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing is called " + name)));
    }

    /** A component of any window by its name, once it is there. */
    static JComponent await(String name) {
        until(() -> named(name).isPresent());
        return on(() -> named(name).orElseThrow());
    }

    /** A component of any window that can be seen, by its name. */
    static Optional<JComponent> named(String name) {
        return Arrays.stream(Window.getWindows())
                .filter(Window::isShowing)
                .flatMap(window -> all(window).stream())
                .filter(each -> name.equals(each.getName()) && each.isShowing())
                .findFirst();
    }

    /** Presses a button of any window, by its name or what stands on it. */
    void press(String name) {
        until(() -> button(name).isPresent());
        AbstractButton button = on(() -> button(name).orElseThrow());
        Point corner = on(button::getLocationOnScreen);
        robot.mouseMove(corner.x + button.getWidth() / 2, corner.y + button.getHeight() / 2);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.waitForIdle();
    }

    private static Optional<AbstractButton> button(String name) {
        return Arrays.stream(Window.getWindows())
                .filter(Window::isShowing)
                .flatMap(window -> all(window).stream())
                .filter(each -> each.isShowing() && each instanceof AbstractButton)
                .map(AbstractButton.class::cast)
                .filter(each -> name.equals(each.getName()) || name.equals(each.getText()))
                .findFirst();
    }

    static List<JComponent> all(Container container) {
        List<JComponent> all = new ArrayList<>();
        for (Component each : container.getComponents()) {
            if (each instanceof JComponent component) {
                all.add(component);
            }
            if (each instanceof Container inside) {
                all.addAll(all(inside));
            }
        }
        return all;
    }

    /** Drags from one place of a component by so many points. */
    void drag(JComponent component, double x, double y, int across, int down) {
        Point corner = on(component::getLocationOnScreen);
        int fromX = corner.x + (int) (x * component.getWidth());
        int fromY = corner.y + (int) (y * component.getHeight());
        robot.mouseMove(fromX, fromY);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        for (int i = 1; i <= 12; i++) {
            robot.mouseMove(fromX + across * i / 12, fromY + down * i / 12);
        }
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.waitForIdle();
    }

    void key(int code, int... held) {
        for (int each : held) {
            robot.keyPress(each);
        }
        robot.keyPress(code);
        robot.keyRelease(code);
        for (int each : held) {
            robot.keyRelease(each);
        }
        robot.waitForIdle();
    }

    void type(String text) {
        text.chars().forEach(letter -> key(KeyEvent.getExtendedKeyCodeForChar(letter)));
    }

    void picture(Path file) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            Rectangle screen = new Rectangle(Toolkit.getDefaultToolkit().getScreenSize());
            ImageIO.write(robot.createScreenCapture(screen), "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Closes it by its key and waits until all is put away. */
    void close() {
        key(KeyEvent.VK_Q, KeyEvent.VK_CONTROL);
        try {
            if (!closed.await(PATIENCE, TimeUnit.MILLISECONDS)) {
                throw new AssertionError("it does not close");
            }
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Measures how long the screen's thread is busy with one event, by the clock and in time of a processor, ms. */
    static final class BusyQueue extends EventQueue {
        final List<Double> busy = new CopyOnWriteArrayList<>();
        final List<Double> processor = new CopyOnWriteArrayList<>();
        private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();

        @Override
        protected void dispatchEvent(AWTEvent event) {
            long start = System.nanoTime();
            long work = threads.getCurrentThreadCpuTime();
            super.dispatchEvent(event);
            double spent = (System.nanoTime() - start) / 1e6;
            if (spent > 1) {
                busy.add(spent);
                processor.add((threads.getCurrentThreadCpuTime() - work) / 1e6);
            }
        }

        void install() {
            Toolkit.getDefaultToolkit().getSystemEventQueue().push(this);
        }
    }
}
