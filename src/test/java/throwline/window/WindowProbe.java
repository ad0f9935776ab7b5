package throwline.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.input.PackedAirfoils;
import throwline.model.SetUp;
import throwline.report.data.SixFigures;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.ComparisonStudy;
import throwline.study.Headline;
import throwline.study.HeadlineNumbers;
import throwline.study.SetUpResult;
import throwline.study.WingQuestion;
import throwline.study.WingStudy;
import throwline.window.session.Movable;
import throwline.window.session.Session;

/**
 * How fast the window follows a hand, and whether it stays as it is over many moves: measured, told in
 * {@code target/window/probe.txt}. {@code -Dmoves=30000} makes as many moves as an hour of dragging.
 */
class WindowProbe {

    private static final int WARM = 60;
    private static final int STOPS = 20;

    @TempDir
    private Path folder = Path.of("");

    private final StringBuilder told = new StringBuilder();
    private final Random random = new Random(13);

    @Test
    void it_follows_the_hand_and_stays_as_it_is() throws IOException {
        Path file = folder.resolve("model.yaml");
        Files.copy(Path.of("examples", "orchard.yaml"), file);
        OpenWindow window = new OpenWindow(folder.resolve("state"), file);
        OpenWindow.on(() -> {
            window.session().take("landing flap");
            return true;
        });
        Follow warm = new Follow();
        for (int i = 0; i < WARM; i++) {
            measure(window, warm);
        }
        OpenWindow.BusyQueue queue = new OpenWindow.BusyQueue();
        OpenWindow.on(() -> {
            queue.install();
            return true;
        });
        Follow follow = new Follow();
        for (int i = 0; i < WARM; i++) {
            measure(window, follow);
        }
        tell("from the drag to painted steady flight", follow.quick);
        tell("from the drag to painted numbers of all kinds", follow.all);
        tell("events that keep the screen's thread longer than 1 ms", queue.busy);
        tell("the same in time of a processor, which other programs do not lengthen", queue.processor);
        told.append(String.format("one solve of the wing: %.2f ms%n", solve(window.session())));
        soak(window);
        Files.createDirectories(Path.of("target/window"));
        Files.writeString(Path.of("target/window/probe.txt"), told.toString());
        OpenWindow.on(() -> window.session().save());
        window.close();
        assertThat(window.faults).isEmpty();
    }

    private static final class Follow {
        final List<Double> quick = Collections.synchronizedList(new ArrayList<>());
        final List<Double> all = Collections.synchronizedList(new ArrayList<>());
    }

    /** One move, and the times until its numbers are painted: what is posted after them runs when they are on the screen. */
    private void measure(OpenWindow window, Follow follow) {
        double angle = Math.toRadians(5 + random.nextInt(100) * 0.5);
        window.shown.clear();
        long start = System.nanoTime();
        OpenWindow.on(() -> {
            window.session().drag("flaps", angle, false);
            return true;
        });
        OpenWindow.until(() -> window.shown.stream().anyMatch(view -> isAt(view, angle)));
        OpenWindow.on(() -> true);
        follow.quick.add((window.program().window().paintedAt(false) - start) / 1e6);
        OpenWindow.until(() -> window.shown.stream().anyMatch(view -> view.finished() && isAt(view, angle)));
        OpenWindow.on(() -> true);
        follow.all.add((window.program().window().paintedAt(true) - start) / 1e6);
    }

    private static boolean isAt(HandView view, double angle) {
        return Math.abs(view.setUp().deflection("flaps") - angle) < 1e-9;
    }

    private void tell(String what, List<Double> times) {
        List<Double> sorted = times.stream().sorted().toList();
        if (!sorted.isEmpty()) {
            told.append(String.format(
                    "%s: median %.1f ms, nine of ten within %.1f ms, most %.1f ms (%d)%n",
                    what,
                    sorted.get(sorted.size() / 2),
                    sorted.get(sorted.size() * 9 / 10),
                    sorted.get(sorted.size() - 1),
                    sorted.size()));
        }
    }

    private static double solve(Session session) {
        WingStudy study = new WingStudy(new MeasuredSections());
        SetUp setUp = session.setUp();
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            long start = System.nanoTime();
            study.sweep(session.model(), new PackedAirfoils(), WingQuestion.of(setUp, List.of(Math.toRadians(4)), 12));
            times.add((System.nanoTime() - start) / 1e6);
        }
        return times.stream().sorted().toList().get(times.size() / 2);
    }

    /** Random dragging without a rest, with a look at the memory and at the numbers. */
    private void soak(OpenWindow window) {
        int moves = Integer.getInteger("moves", 600);
        List<Long> memory = new ArrayList<>();
        int equal = 0;
        for (int i = 1; i <= moves; i++) {
            OpenWindow.on(() -> {
                Session session = window.session();
                List<Movable> movables = session.movables();
                Movable movable = movables.get(random.nextInt(movables.size()));
                double angle = movable.stopped(random.nextGaussian() * 0.5);
                session.drag(movable.name(), angle, random.nextBoolean());
                if (random.nextInt(8) == 0) {
                    session.letGo();
                }
                return true;
            });
            OpenWindow.sleep(10);
            // What was shown holds pictures; kept, a thousand of them would fill the memory.
            window.shown.clear();
            if (i % (moves / STOPS) == 0) {
                OpenWindow.on(() -> window.session().letGo());
                SetUp wanted = OpenWindow.on(() -> window.session().setUp());
                OpenWindow.until(() -> !window.shown.isEmpty()
                        && window.shown.get(window.shown.size() - 1).finished()
                        && window.shown.get(window.shown.size() - 1).setUp().equals(wanted));
                equal += isFresh(window, window.shown.get(window.shown.size() - 1)) ? 1 : 0;
                window.shown.clear();
                System.gc();
                Runtime runtime = Runtime.getRuntime();
                memory.add((runtime.totalMemory() - runtime.freeMemory()) / (1024 * 1024));
            }
        }
        told.append(String.format(
                "%d moves: memory after %s MB; numbers equal to a fresh comparison at %d of %d stops%n",
                moves, memory, equal, memory.size()));
        assertThat(equal).isEqualTo(memory.size());
    }

    /** The table of the window against one that is made of a fresh comparison. */
    private static boolean isFresh(OpenWindow window, HandView view) {
        Session session = window.session();
        var all = new ComparisonStudy(new MeasuredSections(), Bands.load())
                .compare(session.model(), session.document().airfoils(), List.of(session.pack()));
        SetUpResult expected = all.packs().get(0).setUps().stream()
                .filter(each -> each.setUp().name().equals(view.setUp().name()))
                .findFirst()
                .orElseThrow();
        return numbers(view.result()).equals(numbers(expected));
    }

    private static List<String> numbers(SetUpResult result) {
        return result.headlines().all().stream().map(WindowProbe::number).toList();
    }

    private static String number(HeadlineNumbers.Entry entry) {
        return entry.number() instanceof Headline.Known known
                ? SixFigures.of(known.value()) + " " + SixFigures.of(known.low()) + " " + SixFigures.of(known.high())
                : entry.number().toString();
    }
}
