package throwline.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import throwline.report.ReportFile;

/**
 * A hidden folder beside the files to be: {@code new} holds them complete before the first takes its place, {@code old}
 * what they replace until the last has. Its list, written first, tells whose it is when its process has died.
 */
final class StagingFolder {

    private static final String PREFIX = ".throwline-new-";

    private final Path folder;
    private final Path place;
    private final String heading;

    private StagingFolder(Path folder, Path place, String heading) {
        this.folder = folder;
        this.place = place;
        this.heading = heading;
    }

    /** A new one that no other process knows. */
    static StagingFolder create(Path folder, String heading) throws IOException {
        return new StagingFolder(folder, Files.createTempDirectory(folder, PREFIX), heading);
    }

    /** Those that dead processes left; to be asked only by the holder of the folder's lock. */
    static List<StagingFolder> left(Path folder, String heading) throws IOException {
        List<StagingFolder> left = new ArrayList<>();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, PREFIX + "*")) {
            for (Path place : found) {
                if (Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
                    left.add(new StagingFolder(folder, place, heading));
                }
            }
        }
        return left;
    }

    /** The list that it was made with. */
    Manifest list() throws IOException {
        return Manifest.read(place.resolve(Manifest.NAME), heading);
    }

    /** Writes all files, and the list of the folder as it will be. */
    void fill(List<ReportFile> files, Manifest after) throws IOException {
        byte[] list = after.text().getBytes(StandardCharsets.UTF_8);
        Files.write(place.resolve(Manifest.NAME), list, StandardOpenOption.CREATE_NEW);
        Files.createDirectory(place.resolve("new"));
        Files.createDirectory(place.resolve("old"));
        for (ReportFile file : files) {
            Files.write(fresh(file.name()), file.content(), StandardOpenOption.CREATE_NEW);
        }
        Files.write(fresh(Manifest.NAME), list, StandardOpenOption.CREATE_NEW);
    }

    /** Lets each file take its place; where one cannot, all are as before. */
    void publish(List<String> names) throws IOException {
        List<String> begun = new ArrayList<>();
        boolean done = false;
        try {
            for (String name : names) {
                begun.add(name);
                if (isThere(folder.resolve(name))) {
                    Files.move(folder.resolve(name), replaced(name));
                }
                Files.move(fresh(name), folder.resolve(name));
            }
            done = true;
        } finally {
            if (!done) {
                for (String name : begun) {
                    takeBack(name);
                }
            }
        }
    }

    /** Puts back what was on its way out when the process died, then removes all that the list names, and the folder. */
    void remove() throws IOException {
        Path list = place.resolve(Manifest.NAME);
        if (Manifest.isList(list, heading)) {
            Set<String> names = new TreeSet<>(list().hashes().keySet());
            names.add(Manifest.NAME);
            for (String name : names) {
                if (isThere(replaced(name)) && !isThere(folder.resolve(name))) {
                    Files.move(replaced(name), folder.resolve(name));
                }
                Files.deleteIfExists(replaced(name));
                Files.deleteIfExists(fresh(name));
            }
            Files.deleteIfExists(place.resolve("new"));
            Files.deleteIfExists(place.resolve("old"));
            Files.delete(list);
        }
        Files.deleteIfExists(place);
    }

    private void takeBack(String name) throws IOException {
        if (isThere(folder.resolve(name)) && !isThere(fresh(name))) {
            Files.move(folder.resolve(name), fresh(name));
        }
        if (isThere(replaced(name))) {
            Files.move(replaced(name), folder.resolve(name));
        }
    }

    private Path fresh(String name) {
        return place.resolve("new").resolve(name);
    }

    private Path replaced(String name) {
        return place.resolve("old").resolve(name);
    }

    private static boolean isThere(Path path) {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
    }
}
