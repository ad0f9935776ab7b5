package throwline.window;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JComponent;
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

    @Test
    void every_page_is_painted() throws IOException {
        for (String name : List.of("orchard.yaml", "orchard-flights.yaml")) {
            Files.copy(Path.of("examples", "season", name), folder.resolve(name));
        }
        Settings settings = new Settings(folder.resolve("state"), new Disk());
        settings.put("look", look);
        settings.put("size", size);
        settings.put("width", "9999");
        settings.put("height", "9999");
        settings.save();
        OpenWindow window = new OpenWindow(folder.resolve("state"), folder.resolve("orchard.yaml"));
        OpenWindow.on(() -> {
            window.session().take("landing flap");
            return true;
        });
        OpenWindow.until(() -> window.shown.get(window.shown.size() - 1).finished());
        window.picture(file("page-1"));
        for (int page = 2; page <= 8; page++) {
            window.key(KeyEvent.VK_0 + page, KeyEvent.VK_CONTROL);
            OpenWindow.sleep(page == 2 || page == 6 ? 6000 : 400);
            window.picture(file("page-" + page));
        }
        window.key(KeyEvent.VK_5, KeyEvent.VK_CONTROL);
        JTable keys = (JTable) window.find("keys");
        for (int row = 0; row < OpenWindow.on(keys::getRowCount); row++) {
            int chosen = row;
            String place = OpenWindow.on(() -> {
                keys.setRowSelectionInterval(chosen, chosen);
                keys.scrollRectToVisible(keys.getCellRect(chosen, 0, true));
                return String.valueOf(keys.getValueAt(chosen, 0));
            });
            if (Boolean.getBoolean("keys")) {
                picture(window, "key-" + place.replaceAll("\\W+", "-"));
            }
        }
        window.close();
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
