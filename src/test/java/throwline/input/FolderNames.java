package throwline.input;

import java.io.File;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import throwline.model.AirfoilName;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.PolarRun;

/** Knows the names of the packed airfoils and nothing else about them. */
final class FolderNames implements AirfoilLibrary {

    private static final PolarRun RUN = new PolarRun(PolarRun.Kind.DRAG, 1e5, 0, 0, "", "", List.of());

    private final Map<String, Airfoil> airfoils = new TreeMap<>();

    FolderNames() {
        Arrays.stream(Objects.requireNonNull(new File("airfoils").list()))
                .forEach(n -> airfoils.put(new AirfoilName(n).key(), new Airfoil(n, n, 0.1, 0, 0, List.of(RUN))));
    }

    @Override
    public Optional<Airfoil> find(AirfoilName name) {
        return Optional.ofNullable(airfoils.get(name.key()));
    }

    @Override
    public List<String> names() {
        return new ArrayList<>(airfoils.values()).stream().map(Airfoil::name).toList();
    }
}
