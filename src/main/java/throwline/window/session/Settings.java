package throwline.window.session;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;

/** Memory of the window from one time to the next. A file of it that cannot be read or written counts as empty. */
public final class Settings {

    private final Path file;
    private final Disk disk;
    private final Properties values = new Properties();

    /** Those in a folder. */
    public Settings(Path folder, Disk disk) {
        file = folder.resolve("window.properties");
        this.disk = disk;
        try {
            values.load(new StringReader(disk.letters(file).orElse("")));
        } catch (IOException | IllegalArgumentException e) {
            values.clear();
        }
    }

    /** A value; empty where there is none. */
    public String get(String key) {
        return values.getProperty(key, "");
    }

    /** A whole number, or another where there is none. */
    public int number(String key, int otherwise) {
        String text = get(key);
        return text.matches("-?\\d{1,6}") ? Integer.parseInt(text) : otherwise;
    }

    /** Remembers a value. */
    public void put(String key, String value) {
        values.setProperty(key, value);
    }

    /** Writes them; nothing is said where the disk does not take them. */
    public void save() {
        StringWriter letters = new StringWriter();
        try {
            values.store(letters, null);
            Files.createDirectories(file.toAbsolutePath().getParent());
            disk.write(file, letters.toString());
        } catch (IOException e) {
            // The window opens in its usual place next time.
        }
    }
}
