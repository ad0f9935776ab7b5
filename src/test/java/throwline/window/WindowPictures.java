package throwline.window;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JSlider;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.window.session.Disk;
import throwline.window.session.Settings;

/**
 * Pictures of every page, to be looked at, in {@code target/window/pictures}: {@code -Dlook=dark -Dsize=200} as wished. Needs
 * a screen, as {@link WindowChecks} does.
 */
class WindowPictures {

    private final String look = System.getProperty("look", "light");
    private final String size = System.getProperty("size", "100");

    @TempDir
    private Path folder = Path.of("");

    private Path file(String name) {
        return Path.of("target/window/pictures", look + "-" + size, name + ".png");
    }

    /** An example with flights, a motor and a throttle, in the wanted look on a window that fills the screen. */
    private OpenWindow opened() throws IOException {
        try (Stream<Path> season = Files.list(Path.of("examples", "season"))) {
            for (Path each : season.toList()) {
                Files.copy(each, folder.resolve(each.getFileName()));
            }
        }
        // The same model with its motor, which has a throttle.
        Path model = folder.resolve("orchard.yaml");
        Files.copy(Path.of("examples", "orchard.yaml"), model, StandardCopyOption.REPLACE_EXISTING);
        Settings settings = new Settings(folder.resolve("state"), new Disk());
        settings.put("look", look);
        settings.put("size", size);
        settings.put("width", "9999");
        settings.put("height", "9999");
        settings.save();
        return new OpenWindow(folder.resolve("state"), model);
    }

    @Test
    void every_page_is_painted() throws IOException {
        OpenWindow window = opened();
        OpenWindow.on(() -> {
            window.session().take("landing flap");
            return true;
        });
        OpenWindow.until(() -> window.shown.stream()
                .anyMatch(view -> view.finished() && view.setUp().name().equals("landing flap")));
        OpenWindow.sleep(300);
        window.picture(file("page-1"));
        JSlider throttle = (JSlider) window.find("throttle");
        OpenWindow.on(() -> {
            throttle.scrollRectToVisible(throttle.getBounds());
            throttle.setValue(throttle.getMaximum() / 2);
            return true;
        });
        OpenWindow.sleep(2000);
        window.picture(file("page-1-throttle"));
        OpenWindow.on(() -> {
            throttle.setValue(0);
            return true;
        });
        for (int page = 2; page <= 8; page++) {
            window.key(KeyEvent.VK_0 + page, KeyEvent.VK_CONTROL);
            OpenWindow.sleep(page == 2 || page == 6 ? 9000 : 600);
            window.picture(file("page-" + page));
        }
        keys(window);
        questions(window);
        window.close();
    }

    /** What the drawing points at, for one value or, on demand, for each of them. */
    private void keys(OpenWindow window) throws IOException {
        window.key(KeyEvent.VK_5, KeyEvent.VK_CONTROL);
        JTable keys = (JTable) window.find("keys");
        for (int row = 0; row < OpenWindow.on(keys::getRowCount); row++) {
            int chosen = row;
            String place = OpenWindow.on(() -> {
                keys.setRowSelectionInterval(chosen, chosen);
                keys.scrollRectToVisible(keys.getCellRect(chosen, 0, true));
                return String.valueOf(keys.getValueAt(chosen, 0));
            });
            if (place.equals("tail.arm")) {
                window.robot().waitForIdle();
                window.picture(file("page-5-tail-arm"));
            }
            if (Boolean.getBoolean("keys")) {
                picture(window, "key-" + place.replaceAll("\\W+", "-"));
            }
        }
    }

    /** The first questions about an own model. */
    private void questions(OpenWindow window) {
        window.key(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
        OpenWindow.await("question");
        OpenWindow.sleep(300);
        window.picture(file("new-1"));
        for (int i = 0; i < 7; i++) {
            String question =
                    OpenWindow.on(() -> ((JLabel) OpenWindow.named("question").orElseThrow()).getText());
            OwnModelTest.ANSWERS.entrySet().stream()
                    .filter(each -> question.contains(each.getKey()))
                    .filter(each ->
                            OpenWindow.on(() -> OpenWindow.named("answer").isPresent()))
                    .findFirst()
                    .ifPresent(each -> window.type(each.getValue().toLowerCase(Locale.ROOT)));
            window.key(KeyEvent.VK_ENTER);
            OpenWindow.sleep(200);
            window.picture(file("new-" + (i + 2)));
        }
        window.press("window.cancel");
    }

    private void picture(OpenWindow window, String name) throws IOException {
        JComponent canvas = window.find("sketch");
        java.awt.image.BufferedImage image = OpenWindow.on(() -> {
            java.awt.image.BufferedImage painted = new java.awt.image.BufferedImage(
                    canvas.getWidth(), canvas.getHeight(), java.awt.image.BufferedImage.TYPE_INT_RGB);
            var g2 = painted.createGraphics();
            g2.setColor(canvas.getParent().getBackground());
            g2.fillRect(0, 0, canvas.getWidth(), canvas.getHeight());
            canvas.paint(g2);
            g2.dispose();
            return painted;
        });
        Files.createDirectories(file(name).getParent());
        javax.imageio.ImageIO.write(image, "png", file(name).toFile());
    }
}
