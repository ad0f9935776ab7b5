package throwline.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;

/**
 * File of flights that a command adds to.
 *
 * @param context words
 * @param file where flights are kept
 */
record NotesFile(Context context, Path file) {

    /**
     * Writes beside the file first and then moves, so that nothing half-written takes its place.
     *
     * @param entry what is added, shown where it cannot be
     * @param added the new text from the old one, which is empty where there is no file yet
     * @throws WrongInput where nothing can be added, or the file cannot be written; then it is what it was
     */
    void write(String entry, Function<String, Optional<String>> added) {
        Path part = file.resolveSibling(".throwline-" + UUID.randomUUID() + ".part");
        try {
            String before = Files.exists(file) ? Files.readString(file, StandardCharsets.UTF_8) : "";
            String after = added.apply(before)
                    .orElseThrow(() -> new WrongInput(context.words().say("cli.learn.layout", file, entry)));
            Files.writeString(part, after, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
            move(part);
        } catch (IOException e) {
            throw new WrongInput(context.words().say("cli.new.failed", file));
        } finally {
            part.toFile().delete();
        }
    }

    private void move(Path part) throws IOException {
        try {
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
