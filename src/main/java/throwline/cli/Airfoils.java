package throwline.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import throwline.input.NamedAirfoils;
import throwline.input.PackedAirfoils;

/** The airfoils that a person can name: those of the jar, and files beside a model file. */
final class Airfoils {

    private static final Path HERE = Path.of("");

    private Airfoils() {}

    /** Folders and files are meant from the folder of this model file; from the current one for standard input. */
    static NamedAirfoils besides(String model) {
        try {
            return new NamedAirfoils(
                    new PackedAirfoils(),
                    Optional.ofNullable(Path.of(model).getParent()).orElse(HERE));
        } catch (InvalidPathException e) {
            return here();
        }
    }

    /** Folders and files are meant from the current folder. */
    static NamedAirfoils here() {
        return new NamedAirfoils(new PackedAirfoils(), HERE);
    }
}
