package throwline.window.session;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Properties;

/** Answers about an own model that is not finished, kept from one time to the next. */
public final class KeptAnswers {

    private final Path file;
    private final Disk disk;

    /** Those in a folder. */
    public KeptAnswers(Path folder, Disk disk) {
        file = folder.resolve("own-model.answers");
        this.disk = disk;
    }

    /** The answers by question; none where nothing was kept. */
    public Map<String, String> read() {
        Properties kept = new Properties();
        try {
            kept.load(new StringReader(disk.letters(file).orElse("")));
        } catch (IOException | IllegalArgumentException e) {
            return Map.of();
        }
        Map<String, String> answers = new LinkedHashMap<>();
        kept.stringPropertyNames().stream().sorted().forEach(id -> answers.put(id, kept.getProperty(id)));
        return answers;
    }

    /**
     * Keeps these answers; none at all drops the file.
     *
     * @return false where the disk does not take them
     */
    public boolean keep(Map<String, String> answers) {
        try {
            if (answers.isEmpty()) {
                Files.deleteIfExists(file);
                return true;
            }
            Properties kept = new Properties();
            answers.forEach(kept::setProperty);
            StringWriter letters = new StringWriter();
            kept.store(letters, null);
            Files.createDirectories(file.toAbsolutePath().getParent());
            return disk.write(file, letters.toString()) instanceof Disk.Text;
        } catch (IOException e) {
            return false;
        }
    }
}
