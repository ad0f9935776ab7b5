package throwline.validation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystemAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import throwline.words.Message;

/** Folder of cases: one on disk, or the one inside the jar. Every CSV file with a line {@code # kind:} is a case. */
public final class CaseFolder {

    private static final String PACKED = "/throwline/validation";

    private final Path root;

    private CaseFolder(Path root) {
        this.root = root;
    }

    /** The cases in a folder and its folders. */
    public static CaseFolder at(Path root) {
        return new CaseFolder(root);
    }

    /** The cases of the product. */
    public static CaseFolder packed() {
        URL place = CaseFolder.class.getResource(PACKED);
        if (place == null) {
            throw new IllegalStateException("the cases are missing from the jar");
        }
        try {
            URI uri = place.toURI();
            return new CaseFolder(uri.getScheme().equals("jar") ? insideJar(uri).getPath(PACKED) : Path.of(uri));
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Stays open as long as the program runs: paths into it are handed on. */
    private static FileSystem insideJar(URI uri) throws IOException {
        try {
            return FileSystems.newFileSystem(uri, Map.of());
        } catch (FileSystemAlreadyExistsException e) {
            return FileSystems.getFileSystem(uri);
        }
    }

    /** All CSV files in the order of their names. */
    List<Path> tables() throws UnreadableCase {
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.toString().endsWith(".csv") && Files.isRegularFile(file))
                    .sorted((a, b) -> a.toString().compareTo(b.toString()))
                    .toList();
        } catch (IOException | UncheckedIOException e) {
            throw new UnreadableCase(Message.of("case.unreadable", root.toString()));
        }
    }

    /** The bands of common practice, for quantities of which too little was measured; none where the folder has none. */
    List<BandRow> practice() throws UnreadableCase {
        Path file = root.resolve("practice-bands.csv");
        if (!Files.isRegularFile(file)) {
            return List.of();
        }
        try (Stream<String> lines = Files.lines(file, StandardCharsets.UTF_8)) {
            return BandRow.all(lines);
        } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
            throw new UnreadableCase(Message.of("case.unreadable", file.toString()));
        }
    }
}
