package throwline.window.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.Optional;

/** Files of any kind, each written beside its place and moved there. */
public final class BinaryFiles {

    private BinaryFiles() {}

    /**
     * Writes files into a folder, which is made where it is not there.
     *
     * @param files what is in them, by name
     * @return the first that the disk does not take; empty where all are written
     */
    public static Optional<Path> write(Path folder, Map<String, byte[]> files) {
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path place = folder.resolve(file.getKey());
            try {
                Files.createDirectories(folder);
                Path beside = Files.createTempFile(folder, ".throwline-", ".tmp");
                try {
                    Files.write(beside, file.getValue());
                    // A temporary file is for its owner alone; this one is to be handed on.
                    beside.toFile().setReadable(true, false);
                    Files.move(beside, place, StandardCopyOption.REPLACE_EXISTING);
                } finally {
                    Files.deleteIfExists(beside);
                }
            } catch (IOException e) {
                return Optional.of(place);
            }
        }
        return Optional.empty();
    }
}
