package throwline.section;

import java.util.List;
import java.util.Optional;
import throwline.model.AirfoilName;

/** Airfoils by name. */
public interface AirfoilLibrary {

    /** The airfoil of this name, where the library has it. */
    Optional<Airfoil> find(AirfoilName name);

    /** All names, in order. */
    List<String> names();
}
