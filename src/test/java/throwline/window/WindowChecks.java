package throwline.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JSlider;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.window.session.Journal;

/**
 * The window on a screen: a hand drags, keys type, all of it is on the disk afterwards. Needs a screen, so it runs in its
 * own profile only: {@code mvn -Pwindow surefire:test}, under Xvfb and a window manager where there is none.
 */
class WindowChecks {

    private static final Path PICTURES = Path.of("target/window");

    @TempDir
    private Path folder = Path.of("");

    private Path model() throws IOException {
        Path file = folder.resolve("model.yaml");
        if (!Files.exists(file)) {
            Files.copy(Path.of("examples", "orchard.yaml"), file);
        }
        return file;
    }

    @Test
    void a_hand_drags_types_saves_and_finds_all_of_it_again() throws IOException {
        OpenWindow window = new OpenWindow(folder.resolve("state"), model());
        OpenWindow.on(() -> {
            window.session().take("landing flap");
            return true;
        });
        JComponent section = window.find("section.flaps");
        double before = OpenWindow.on(() -> window.session().setUp().deflection("flaps"));
        OpenWindow.on(() -> {
            section.scrollRectToVisible(section.getVisibleRect());
            return true;
        });
        window.drag(section, 0.86, 0.62, -20, 18);
        double dragged = OpenWindow.on(() -> window.session().setUp().deflection("flaps"));
        assertThat(dragged).isGreaterThan(before + Math.toRadians(4));
        OpenWindow.until(() -> window.shown.get(window.shown.size() - 1).finished());
        assertThat(window.shown.get(window.shown.size() - 1).setUp().deflection("flaps"))
                .isEqualTo(dragged);
        window.picture(PICTURES.resolve("dragged.png"));

        JComponent typed = window.find("typed.ailerons");
        OpenWindow.on(typed::requestFocusInWindow);
        window.robot().waitForIdle();
        window.type("9 mm up");
        window.key(KeyEvent.VK_ENTER);
        assertThat(OpenWindow.on(
                        () -> window.session().document().text().at(List.of("set-ups", "landing flap", "ailerons"))))
                .hasValue("9 mm up");
        window.key(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
        assertThat(Files.readString(model())).contains("9 mm up").contains("# Orchard: an invented model");
        window.close();

        OpenWindow again = new OpenWindow(folder.resolve("state"), model());
        assertThat(OpenWindow.on(() -> again.session().model().setUps().get(2).deflection("flaps")))
                .isEqualTo(dragged);
        again.close();
        assertThat(window.faults).isEmpty();
        assertThat(again.faults).isEmpty();
        assertThat(new Journal(folder.resolve("state/unsaved"), 1, new throwline.window.session.Disk()).lost())
                .isEmpty();
    }

    @Test
    void the_keyboard_alone_reaches_everything() throws IOException {
        OpenWindow window = new OpenWindow(folder.resolve("state"), model());
        JComponent slider = window.find("slider.flaps");
        double before = OpenWindow.on(() -> window.session().setUp().deflection("flaps"));
        for (int i = 0; i < 60 && !OpenWindow.on(slider::isFocusOwner); i++) {
            window.key(KeyEvent.VK_TAB);
        }
        assertThat(OpenWindow.on(slider::isFocusOwner)).isTrue();
        window.key(KeyEvent.VK_DOWN);
        window.key(KeyEvent.VK_DOWN, KeyEvent.VK_SHIFT);
        assertThat(OpenWindow.on(() -> window.session().setUp().deflection("flaps")) - before)
                .isCloseTo(Math.toRadians(0.6), org.assertj.core.api.Assertions.within(1e-9));
        window.key(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        window.key(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        assertThat(OpenWindow.on(() -> window.session().setUp().deflection("flaps")))
                .isEqualTo(before);
        for (int page = 2; page <= 8; page++) {
            window.key(KeyEvent.VK_0 + page, KeyEvent.VK_CONTROL);
            window.picture(PICTURES.resolve("page-" + page + ".png"));
        }
        window.key(KeyEvent.VK_2, KeyEvent.VK_CONTROL);
        OpenWindow.until(() -> OpenWindow.all(window.program().window().frame().getRootPane()).stream()
                .anyMatch(each -> "comparison".equals(each.getName()) && each.isShowing()));
        window.picture(PICTURES.resolve("page-2.png"));
        List<JComponent> nameless = OpenWindow.on(
                () -> OpenWindow.all(window.program().window().frame().getRootPane()).stream()
                        .filter(WindowChecks::isWorked)
                        .filter(each -> !hasName(each))
                        .toList());
        assertThat(nameless).isEmpty();
        window.close();
        assertThat(window.faults).isEmpty();
    }

    /** Whatever a page has to work with gets the focus by the tab key alone, in the order in which it is read. */
    @Test
    void the_tab_key_reaches_whatever_a_page_has() throws IOException {
        OpenWindow window = new OpenWindow(folder.resolve("state"), model());
        List<String> missed = new ArrayList<>();
        for (int page = 1; page <= 8; page++) {
            window.key(KeyEvent.VK_0 + page, KeyEvent.VK_CONTROL);
            window.robot().delay(300);
            Set<Component> wanted = OpenWindow.on(() -> worked(window));
            Set<Component> reached = new HashSet<>();
            for (int i = 0; i < 60 && !reached.containsAll(wanted); i++) {
                OpenWindow.on(() -> Optional.ofNullable(KeyboardFocusManager.getCurrentKeyboardFocusManager()
                                .getFocusOwner()))
                        .ifPresent(reached::add);
                if (OpenWindow.on(WindowChecks::isInTable)) {
                    window.key(KeyEvent.VK_TAB, KeyEvent.VK_CONTROL);
                } else {
                    window.key(KeyEvent.VK_TAB);
                }
            }
            wanted.removeAll(reached);
            missed.addAll(wanted.stream().map(Component::getName).toList());
        }
        window.close();
        assertThat(missed).isEmpty();
        assertThat(window.faults).isEmpty();
    }

    /** In a table the tab key goes to the next cell; with Control it leaves. */
    private static boolean isInTable() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() instanceof JTable;
    }

    private static Set<Component> worked(OpenWindow window) {
        return OpenWindow.all(window.program().window().frame().getContentPane()).stream()
                .filter(each -> each.isShowing() && each.isEnabled() && isWorked(each))
                .filter(each -> !(each instanceof JTextComponent text) || text.isEditable())
                .filter(each -> !(each instanceof AbstractButton) || each.isRequestFocusEnabled())
                .collect(Collectors.toCollection(HashSet::new));
    }

    /** By the arrow keys from value to value: the drawing beside them points at each, and tells it to who cannot see it. */
    @Test
    void the_drawing_points_at_the_chosen_value() throws IOException {
        OpenWindow window = new OpenWindow(folder.resolve("state"), model());
        window.key(KeyEvent.VK_5, KeyEvent.VK_CONTROL);
        JTable keys = (JTable) window.find("keys");
        OpenWindow.on(keys::requestFocusInWindow);
        window.key(KeyEvent.VK_HOME, KeyEvent.VK_CONTROL);
        JComponent sketch = window.find("sketch");
        List<String> told = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            told.add(OpenWindow.on(() -> sketch.getAccessibleContext().getAccessibleName()));
            window.key(KeyEvent.VK_DOWN);
        }
        assertThat(told)
                .contains(
                        "From above, to scale: 88 mm",
                        "From above, to scale: 235 mm",
                        "From above, to scale: 800 mm",
                        "Section of the flaps, to scale: 0 deg, 60 deg");
        window.close();
        assertThat(window.faults).isEmpty();
    }

    /** Size, page and file of the last time. */
    @Test
    void the_window_comes_back_as_it_was() throws IOException {
        OpenWindow window = new OpenWindow(folder.resolve("state"), model());
        OpenWindow.on(() -> {
            window.program().window().frame().setSize(1100, 700);
            return true;
        });
        window.robot().waitForIdle();
        window.key(KeyEvent.VK_4, KeyEvent.VK_CONTROL);
        Dimension size = OpenWindow.on(() -> window.program().window().frame().getSize());
        window.close();
        OpenWindow again = new OpenWindow(folder.resolve("state"), Optional.empty());
        again.robot().waitForIdle();
        assertThat(OpenWindow.on(() -> again.program().window().frame().getSize()))
                .isEqualTo(size);
        assertThat(again.find("sticks").isShowing()).isTrue();
        assertThat(OpenWindow.on(() -> again.session().document().place())).hasValue(model());
        again.close();
    }

    /** True for what a person works with and we made; arrows of boxes and bars are the look's own. */
    private static boolean isWorked(JComponent component) {
        boolean own = !component.getClass().getName().startsWith("com.formdev")
                && !component.getClass().getName().startsWith("javax.swing.plaf");
        return own
                && component.isFocusable()
                && (component instanceof AbstractButton
                        || component instanceof JTextComponent
                        || component instanceof JSlider
                        || component instanceof JTable
                        || component instanceof JComboBox<?>
                        || component instanceof SectionCanvas);
    }

    private static boolean hasName(JComponent component) {
        String name = component.getAccessibleContext().getAccessibleName();
        return (name != null && !name.isBlank()) || (component instanceof JTextComponent text && !text.isEditable());
    }
}
