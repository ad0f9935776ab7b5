package throwline.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import throwline.input.PackedAirfoils;
import throwline.validation.CaseFolder;
import throwline.validation.Validation;

/** Long work that is stopped ends soon, and nothing of it is shown. */
class WorkTest {

    private static final long PATIENCE = 20_000;

    private final Work work = new Work();
    private final List<Object> shown = new CopyOnWriteArrayList<>();
    private final CountDownLatch begun = new CountDownLatch(1);
    private final CountDownLatch ended = new CountDownLatch(1);

    @Test
    void what_is_stopped_ends_and_is_not_shown() throws Exception {
        SwingUtilities.invokeAndWait(() -> work.begin(
                sections -> {
                    try {
                        begun.countDown();
                        return new Validation(sections, new PackedAirfoils()).run(CaseFolder.at(Path.of("validation")));
                    } finally {
                        ended.countDown();
                    }
                },
                shown::add,
                shown::add));
        assertThat(begun.await(PATIENCE, TimeUnit.MILLISECONDS)).isTrue();
        SwingUtilities.invokeAndWait(work::stop);
        // Unstopped it works for far longer.
        assertThat(ended.await(PATIENCE, TimeUnit.MILLISECONDS)).isTrue();
        SwingUtilities.invokeAndWait(() -> {});
        assertThat(shown).isEmpty();
        assertThat(work.isRunning()).isFalse();
    }

    @Test
    void what_comes_to_its_end_is_shown_once() throws Exception {
        SwingUtilities.invokeAndWait(() -> work.begin(sections -> "found", shown::add, shown::add));
        for (int i = 0; i < PATIENCE && shown.isEmpty(); i += 10) {
            Thread.sleep(10);
            SwingUtilities.invokeAndWait(() -> {});
        }
        assertThat(shown).containsExactly("found");
    }
}
