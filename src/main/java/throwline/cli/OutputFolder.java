package throwline.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import throwline.report.ReportFile;
import throwline.words.Words;

/**
 * A folder that files are written to. Only files that were written here before and are unchanged since are replaced,
 * unless the person says so; either all files are written or none.
 *
 * <p>The protocol, all of it under the {@link FolderLock}:
 *
 * <ol>
 *   <li>A file is ours where the {@link Manifest} of the folder, or that of a {@link StagingFolder} whose process has
 *       died, has its name and hash; with any other in the way nothing is written.
 *   <li>What dead processes left is removed; a file that was on its way out is put back first.
 *   <li>A new hidden staging folder gets first the list of the folder as it will be, then all files. A disk that is full
 *       is full here, where nothing has changed yet.
 *   <li>File by file, the old one moves into the staging folder and the new one to its place; the list comes last. Where
 *       a move fails, all are taken back.
 *   <li>The staging folder goes, its list last, so that after a death at any point the next run knows what is ours.
 * </ol>
 *
 * <p>Every file and folder on the way is made new, and no link is followed but one that is the folder itself.
 */
final class OutputFolder {

    private final Path folder;
    private final boolean replace;
    private final Words words;
    private final List<ReportFile> files = new ArrayList<>();

    /**
     * @param folder made where it is not there
     * @param replace true to replace whatever has the name of a file
     * @param words the sentences
     */
    OutputFolder(Path folder, boolean replace, Words words) {
        this.folder = folder;
        this.replace = replace;
        this.words = words;
    }

    /**
     * Files to be written, their names behind a prefix.
     *
     * @throws IllegalArgumentException where two have one name
     */
    void add(String prefix, List<ReportFile> more) {
        for (ReportFile file : more) {
            String name = prefix + file.name();
            if (files.stream().anyMatch(other -> other.name().equals(name))) {
                throw new IllegalArgumentException("two files of the name " + name);
            }
            files.add(file.named(name));
        }
    }

    /**
     * Writes all files.
     *
     * @throws WrongInput where the folder cannot be used or a file is not ours to replace; then nothing was written
     */
    void write() {
        List<Path> missing = missingFolders();
        boolean done = false;
        try {
            if (!missing.isEmpty()) {
                Files.createDirectories(folder);
            }
            FolderLock lock = FolderLock.take(folder, words);
            try {
                writeLocked();
                done = true;
            } finally {
                lock.close();
            }
        } catch (FileAlreadyExistsException e) {
            throw new WrongInput(words.say("cli.out.no-folder", folder));
        } catch (AccessDeniedException e) {
            throw new WrongInput(words.say("cli.out.denied", folder));
        } catch (IOException e) {
            throw new WrongInput(words.say("cli.out.failed", folder, reason(e)));
        } finally {
            if (!done) {
                removeEmpty(missing);
            }
        }
    }

    private void writeLocked() throws IOException {
        String heading = words.say("cli.out.manifest");
        Manifest ours = Manifest.read(folder.resolve(Manifest.NAME), heading);
        List<StagingFolder> left = StagingFolder.left(folder, heading);
        for (StagingFolder dead : left) {
            ours = ours.with(dead.list(), folder);
        }
        refuseStrangers(ours, heading);
        for (StagingFolder dead : left) {
            remove(dead);
        }
        Manifest after = ours;
        List<String> names = new ArrayList<>();
        for (ReportFile file : files) {
            after = after.with(file);
            names.add(file.name());
        }
        names.add(Manifest.NAME);
        StagingFolder staging = StagingFolder.create(folder, heading);
        try {
            staging.fill(files, after);
            staging.publish(names);
        } finally {
            remove(staging);
        }
    }

    private void refuseStrangers(Manifest manifest, String heading) throws IOException {
        List<String> strangers = new ArrayList<>();
        for (ReportFile file : files) {
            if (!isFree(file.name()) && !manifest.holds(folder.resolve(file.name()))) {
                strangers.add(file.name());
            }
        }
        if (!isFree(Manifest.NAME) && !Manifest.isList(folder.resolve(Manifest.NAME), heading)) {
            strangers.add(Manifest.NAME);
        }
        if (!replace && !strangers.isEmpty()) {
            throw new WrongInput(words.say("cli.out.stranger", folder, String.join(", ", strangers)));
        }
    }

    private boolean isFree(String name) {
        Path place = folder.resolve(name);
        if (Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
            throw new WrongInput(words.say("cli.out.is-folder", place));
        }
        return !Files.exists(place, LinkOption.NOFOLLOW_LINKS);
    }

    /** What cannot be removed now the next run tries again. */
    private static void remove(StagingFolder staging) {
        try {
            staging.remove();
        } catch (IOException inTheWay) {
            return;
        }
    }

    /** The folder and those above it that are not there, the innermost first. */
    private List<Path> missingFolders() {
        List<Path> missing = new ArrayList<>();
        for (Path place = folder; place != null && !Files.isDirectory(place); place = place.getParent()) {
            missing.add(place);
        }
        return missing;
    }

    private static void removeEmpty(List<Path> folders) {
        for (Path place : folders) {
            try {
                if (Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
                    Files.delete(place);
                }
            } catch (IOException inUse) {
                return;
            }
        }
    }

    private static String reason(IOException fault) {
        String reason = fault instanceof FileSystemException known ? known.getReason() : fault.getMessage();
        return reason == null ? fault.getClass().getSimpleName() : reason;
    }
}
