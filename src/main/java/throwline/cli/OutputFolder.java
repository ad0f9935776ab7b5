package throwline.cli;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import throwline.report.ReportFile;
import throwline.words.Words;

/**
 * A folder that files are written to. Only files that were written here before and are unchanged since are replaced,
 * unless the person says so; either all files are written or none.
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

    /** Files to be written, their names behind a prefix. */
    void add(String prefix, List<ReportFile> more) {
        more.forEach(file -> files.add(file.named(prefix + file.name())));
    }

    /**
     * Writes all files.
     *
     * @throws WrongInput where the folder cannot be used or a file is not ours to replace; then nothing was written
     */
    void write() {
        try {
            Files.createDirectories(folder);
            Manifest manifest = Manifest.read(folder);
            refuseStrangers(manifest);
            for (ReportFile file : files) {
                Files.write(part(file.name()), file.content());
            }
            for (ReportFile file : files) {
                move(file.name());
                manifest = manifest.with(file);
            }
            Files.writeString(
                    part(Manifest.NAME), manifest.text(words.say("cli.out.manifest")), StandardCharsets.UTF_8);
            move(Manifest.NAME);
        } catch (FileAlreadyExistsException e) {
            throw new WrongInput(words.say("cli.out.no-folder", folder));
        } catch (AccessDeniedException e) {
            throw new WrongInput(words.say("cli.out.denied", folder));
        } catch (IOException e) {
            throw new WrongInput(words.say("cli.out.failed", folder, String.valueOf(e.getMessage())));
        } finally {
            removeParts();
        }
    }

    private void refuseStrangers(Manifest manifest) throws IOException {
        List<String> strangers = new ArrayList<>();
        for (ReportFile file : files) {
            Path place = folder.resolve(file.name());
            if (Files.isDirectory(place)) {
                throw new WrongInput(words.say("cli.out.is-folder", place));
            }
            if (Files.exists(place, LinkOption.NOFOLLOW_LINKS) && !manifest.holds(place)) {
                strangers.add(file.name());
            }
        }
        if (!replace && !strangers.isEmpty()) {
            throw new WrongInput(words.say("cli.out.stranger", folder, String.join(", ", strangers)));
        }
    }

    /** Where a file is written before it takes its place. */
    private Path part(String name) {
        return folder.resolve("." + name + ".part");
    }

    private void move(String name) throws IOException {
        Files.move(part(name), folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
    }

    /** What is left of files that did not take their place; one that cannot be removed stays, named as a part. */
    private void removeParts() {
        for (ReportFile file : files) {
            File part = part(file.name()).toFile();
            if (part.exists() && !part.delete()) {
                part.deleteOnExit();
            }
        }
    }
}
