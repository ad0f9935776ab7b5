package throwline.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * A file without a command, as systems give it that open a file with this program or drop it on its icon. What holds no
 * point and no separator may be a command and is no file.
 *
 * @param path of the file
 * @param isThere true where there is such a file
 */
public record LoneFile(Path path, boolean isThere) {

    /** The file of a command line that is nothing else; one that is not there only where it is called as model files are. */
    public static Optional<LoneFile> of(String... arguments) {
        if (arguments.length != 1 || arguments[0].startsWith("-") || !arguments[0].matches("(?s).*[./\\\\].*")) {
            return Optional.empty();
        }
        try {
            Path path = Path.of(arguments[0]);
            boolean there = Files.isRegularFile(path);
            boolean named = arguments[0].toLowerCase(Locale.ROOT).matches("(?s).*\\.ya?ml");
            return there || named ? Optional.of(new LoneFile(path, there)) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
