package throwline.window.session;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;

/**
 * Record of what was changed and not saved, kept on the disk so that it outlives a crash: one file a running window,
 * which is dropped once all is saved or given up.
 */
public final class Journal {

    private static final String ENDING = ".unsaved";

    private final Path folder;
    private final long process;
    private final Disk disk;

    /**
     * @param folder where it is kept
     * @param process number of this process
     * @param disk writes it
     */
    public Journal(Path folder, long process, Disk disk) {
        this.folder = folder;
        this.process = process;
        this.disk = disk;
    }

    /**
     * Work that was not saved.
     *
     * @param kept the file that keeps it
     * @param place the model file that it belongs to; empty for a model that was never saved
     * @param text the text of the model
     */
    public record Lost(Path kept, Optional<Path> place, String text) {}

    /**
     * Keeps a text.
     *
     * @return false where the disk does not take it
     */
    public boolean keep(Optional<Path> place, String text) {
        Properties properties = new Properties();
        place.ifPresent(p -> properties.setProperty("place", p.toAbsolutePath().toString()));
        properties.setProperty("text", text);
        StringWriter letters = new StringWriter();
        try {
            properties.store(letters, null);
            Files.createDirectories(folder);
        } catch (IOException e) {
            return false;
        }
        return disk.write(own(), letters.toString()) instanceof Disk.Text;
    }

    /** Nothing is unsaved any more. */
    public void drop() {
        drop(own());
    }

    /** Gives up what was lost, or has taken it over. */
    public void drop(Lost lost) {
        drop(lost.kept());
    }

    private static void drop(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // It will be offered again, which loses nothing.
        }
    }

    /** What windows left that run no more. */
    public List<Lost> lost() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<Lost> all = new ArrayList<>();
            files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted()
                    .filter(this::isLeft)
                    .forEach(file -> read(file).ifPresent(all::add));
            return all;
        } catch (IOException | UncheckedIOException e) {
            return List.of();
        }
    }

    private boolean isLeft(Path file) {
        String number = String.valueOf(file.getFileName()).replace(ENDING, "");
        return number.matches("\\d{1,18}")
                && Long.parseLong(number) != process
                && ProcessHandle.of(Long.parseLong(number))
                        .filter(ProcessHandle::isAlive)
                        .isEmpty();
    }

    private static Optional<Lost> read(Path file) {
        try {
            Properties properties = new Properties();
            properties.load(new StringReader(Files.readString(file, StandardCharsets.UTF_8)));
            Optional<String> text = Optional.ofNullable(properties.getProperty("text"));
            Optional<Path> place =
                    Optional.ofNullable(properties.getProperty("place")).map(Path::of);
            return text.map(letters -> new Lost(file, place, letters));
        } catch (IOException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private Path own() {
        return folder.resolve(process + ENDING);
    }
}
