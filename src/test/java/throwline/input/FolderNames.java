package throwline.input;

import java.io.File;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import throwline.model.AirfoilName;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.PolarRun;

/** Knows the names of the packed airfoils and nothing else about them. */
final class FolderNames implements AirfoilLibrary {

    private static final PolarRun RUN = new PolarRun(PolarRun.Kind.DRAG, 1e5, 0, "", "", List.of());

    @Override
    public Optional<Airfoil> find(AirfoilName name) {
        return names().stream()
                .filter(n -> new AirfoilName(n).equals(name))
                .findFirst()
                .map(n -> new Airfoil(n, n, 0.1, 0, 0, List.of(RUN)));
    }

    @Override
    public List<String> names() {
        return Arrays.stream(Objects.requireNonNull(new File("airfoils").list()))
                .sorted()
                .toList();
    }
}
