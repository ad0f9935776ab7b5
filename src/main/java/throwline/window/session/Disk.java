package throwline.window.session;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Optional;
import throwline.words.Message;

/** Files of text as the window reads and keeps them: whole or not at all. */
public class Disk {

    /** More than any model file has, characters. */
    private static final long LARGEST = 512 * 1024L;

    private static final String MARK = "\ufeff";

    /** What came of reading or writing. */
    public sealed interface Outcome permits Text, Refused {}

    /**
     * A file that was read, or written.
     *
     * @param letters what is in it, a byte order mark included
     */
    public record Text(String letters) implements Outcome {

        /** What is in it behind a byte order mark. */
        public String model() {
            return letters.startsWith(MARK) ? letters.substring(1) : letters;
        }

        /** Another text with the byte order mark that this one has, or without. */
        public String of(String model) {
            return letters.startsWith(MARK) ? MARK + model : model;
        }
    }

    /**
     * A file that could not be read or written.
     *
     * @param why in a sentence
     */
    public record Refused(Message why) implements Outcome {}

    /** Reads a file. */
    public Outcome read(Path file) {
        try {
            if (!Files.isRegularFile(file)) {
                return refused(Files.exists(file) ? "window.disk.no-file" : "window.disk.missing", file);
            }
            if (Files.size(file) > LARGEST) {
                return refused("window.disk.large", file);
            }
            byte[] bytes = Files.readAllBytes(file);
            String letters = new String(bytes, StandardCharsets.UTF_8);
            boolean same = java.util.Arrays.equals(bytes, letters.getBytes(StandardCharsets.UTF_8));
            return same ? new Text(letters) : refused("window.disk.letters", file);
        } catch (AccessDeniedException e) {
            return refused("window.disk.denied", file);
        } catch (IOException e) {
            return refused("window.disk.unread", file);
        }
    }

    /** What is in a file now; empty where it is not there or cannot be read. */
    public Optional<String> letters(Path file) {
        return read(file) instanceof Text text ? Optional.of(text.letters()) : Optional.empty();
    }

    /** Writes a file beside its place and moves it there, so that a fault leaves the old one as it was. */
    public Outcome write(Path file, String letters) {
        Path target = file;
        try {
            if (Files.exists(file)) {
                target = file.toRealPath();
                if (!Files.isWritable(target)) {
                    return refused("window.disk.read-only", file);
                }
            }
            Path folder = target.toAbsolutePath().getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                return refused("window.disk.no-folder", file);
            }
            Path beside = Files.createTempFile(folder, ".throwline-", ".tmp");
            try {
                put(beside, letters.getBytes(StandardCharsets.UTF_8));
                keepRights(target, beside);
                move(beside, target);
            } finally {
                Files.deleteIfExists(beside);
            }
            return new Text(letters);
        } catch (AccessDeniedException e) {
            return refused("window.disk.folder-read-only", file);
        } catch (NoSuchFileException e) {
            return refused("window.disk.no-folder", file);
        } catch (IOException e) {
            return refused("window.disk.full", file);
        }
    }

    /** Puts bytes into a file; a test makes the disk full here. */
    protected void put(Path file, byte[] bytes) throws IOException {
        Files.write(file, bytes);
    }

    private static void keepRights(Path from, Path to) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (view != null && Files.exists(from)) {
            view.setPermissions(Files.getPosixFilePermissions(from));
        } else if (view != null) {
            view.setPermissions(java.nio.file.attribute.PosixFilePermissions.fromString("rw-r--r--"));
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static Refused refused(String code, Path file) {
        return new Refused(Message.of(code, file.toString()));
    }
}
