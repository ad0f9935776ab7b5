package throwline.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import throwline.input.NamedAirfoils;
import throwline.input.PackedAirfoils;

/**
 * The airfoils that a person can name: those of the jar, and files beside a model file. One of these reads an airfoil once,
 * however many models name it.
 */
final class Airfoils {

    private static final Path HERE = Path.of("");

    private final PackedAirfoils packed = new PackedAirfoils();
    private final Map<Path, NamedAirfoils> byFolder = new HashMap<>();

    /** Folders and files are meant from the folder of this model file; from the current one for standard input. */
    NamedAirfoils besides(String model) {
        try {
            return in(Optional.ofNullable(Path.of(model).getParent()).orElse(HERE));
        } catch (InvalidPathException e) {
            return here();
        }
    }

    /** Folders and files are meant from the current folder. */
    NamedAirfoils here() {
        return in(HERE);
    }

    private NamedAirfoils in(Path folder) {
        return byFolder.computeIfAbsent(folder, place -> new NamedAirfoils(packed, place));
    }
}
