package throwline.cli;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import throwline.words.Words;

/**
 * The right to change a folder, held by one process at a time: the system's lock on an empty hidden file, which ends with
 * the process however it ends. The file is taken away by whoever holds the lock; so a lock counts only while the file that
 * was opened is still the one of that name.
 */
final class FolderLock {

    static final String NAME = ".throwline.lock";

    /** Writing a folder takes about a second; a process that holds it longer has stopped. */
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private static final Duration PAUSE = Duration.ofMillis(20);

    private final Path place;
    private final FileChannel channel;

    private FolderLock(Path place, FileChannel channel) {
        this.place = place;
        this.channel = channel;
    }

    /**
     * Waits for the right to change a folder.
     *
     * @throws WrongInput where another process keeps it, or another thing has the name of the lock
     * @throws IOException where the folder cannot be written to
     */
    static FolderLock take(Path folder, Words words) throws IOException {
        Path place = folder.resolve(NAME);
        long end = System.nanoTime() + PATIENCE.toNanos();
        Optional<FolderLock> taken = attempt(place, words);
        while (taken.isEmpty()) {
            if (System.nanoTime() > end) {
                throw new WrongInput(words.say("cli.out.busy", folder));
            }
            LockSupport.parkNanos(PAUSE.toNanos());
            taken = attempt(place, words);
        }
        return taken.get();
    }

    /** Gives the folder free. */
    void close() throws IOException {
        try {
            Files.deleteIfExists(place);
        } finally {
            channel.close();
        }
    }

    private static Optional<FolderLock> attempt(Path place, Words words) throws IOException {
        try {
            Files.createFile(place);
        } catch (FileAlreadyExistsException e) {
            if (!isEmptyFile(place)) {
                throw new WrongInput(words.say("cli.out.lock", place));
            }
        }
        FileChannel channel = null;
        boolean held = false;
        try {
            String before = identity(place);
            channel = FileChannel.open(place, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
            FileLock lock = channel.tryLock();
            held = lock != null && before.equals(identity(place));
            return held ? Optional.of(new FolderLock(place, channel)) : Optional.empty();
        } catch (OverlappingFileLockException | NoSuchFileException e) {
            return Optional.empty();
        } finally {
            if (channel != null && !held) {
                channel.close();
            }
        }
    }

    /** What was there may be gone by now: then there is nothing in the way either. */
    private static boolean isEmptyFile(Path place) throws IOException {
        try {
            BasicFileAttributes found =
                    Files.readAttributes(place, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            return found.isRegularFile() && found.size() == 0;
        } catch (NoSuchFileException e) {
            return true;
        }
    }

    private static String identity(Path place) throws IOException {
        BasicFileAttributes found = Files.readAttributes(place, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        return found.fileKey() + " " + found.lastModifiedTime();
    }
}
