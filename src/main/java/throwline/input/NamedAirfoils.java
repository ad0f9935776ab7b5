package throwline.input;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import throwline.model.AirfoilName;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.AirfoilShape;
import throwline.section.NumberedOutline;
import throwline.section.SurrogateAirfoil;
import throwline.section.computed.ComputedAirfoil;
import throwline.section.computed.LearnedAirfoils;

/**
 * Airfoils by whatever a person wrote: a name of the library, words, a folder of polar files, a
 * coordinate file or a NACA number of four or five digits. An
 * airfoil without measurements of its own is stood in for by the nearest of the library. Safe for several threads.
 */
public final class NamedAirfoils implements AirfoilLibrary {

    private static final Pattern NUMBER = Pattern.compile("naca[ -]?([0-9]{4,5})", Pattern.CASE_INSENSITIVE);

    private final AirfoilLibrary library;
    private final Path base;
    private final AirfoilWords words = new AirfoilWords();
    private final Map<String, Found> found = new ConcurrentHashMap<>();

    private record Found(Optional<Airfoil> airfoil, List<Problem> problems) {

        static final Found NOTHING = new Found(Optional.empty(), List.of());
    }

    /**
     * Airfoils beside a library.
     *
     * @param library airfoils by name, also those that stand in for others
     * @param base the folder that paths are meant from
     */
    public NamedAirfoils(AirfoilLibrary library, Path base) {
        this.library = library;
        this.base = base;
    }

    @Override
    public Optional<Airfoil> find(AirfoilName name) {
        return resolve(name).airfoil();
    }

    @Override
    public List<String> names() {
        return library.names();
    }

    /** What is wrong with the files that a name points at; empty where it was found or points at none. */
    public List<Problem> problems(AirfoilName name) {
        return resolve(name).problems();
    }

    /** The file or folder that a name was read from, where that lies outside the folder that paths are meant from. */
    Optional<Path> elsewhere(AirfoilName name) {
        if (library.find(name).isPresent() || words.read(name.text()).isPresent()) {
            return Optional.empty();
        }
        try {
            Path file = base.resolve(name.text()).toRealPath();
            return file.startsWith(base.toAbsolutePath().toRealPath()) ? Optional.empty() : Optional.of(file);
        } catch (InvalidPathException | IOException e) {
            return Optional.empty();
        }
    }

    private Found resolve(AirfoilName name) {
        Found known = found.get(name.text());
        if (known == null) {
            known = look(name);
            found.put(name.text(), known);
        }
        return known;
    }

    private Found look(AirfoilName name) {
        Optional<Airfoil> packed = library.find(name);
        if (packed.isPresent()) {
            return new Found(packed, List.of());
        }
        Optional<SurrogateAirfoil> said = words.read(name.text());
        if (said.isPresent()) {
            return standIn(said.get(), name.text());
        }
        Found onDisk = onDisk(name.text());
        return onDisk.equals(Found.NOTHING) ? numbered(name.text()) : onDisk;
    }

    /** By the number of a family whose shape is a formula. */
    private Found numbered(String text) {
        Matcher number = NUMBER.matcher(text.strip());
        return number.matches()
                ? NumberedOutline.of(number.group(1))
                        .map(shape -> outline(shape, text))
                        .orElse(Found.NOTHING)
                : Found.NOTHING;
    }

    private Found onDisk(String text) {
        if (text.isBlank()) {
            return Found.NOTHING;
        }
        Path path;
        try {
            path = base.resolve(text);
        } catch (InvalidPathException e) {
            return Found.NOTHING;
        }
        if (Files.isDirectory(path)) {
            AirfoilFolder.Reading reading = AirfoilFolder.read(path, text);
            return new Found(reading.airfoil(), reading.problems());
        }
        return Files.isRegularFile(path) ? coordinates(path, text) : Found.NOTHING;
    }

    private Found coordinates(Path path, String text) {
        try {
            CoordinateFile.Reading reading = CoordinateFile.read(path.toString(), SourceText.read(path));
            return reading.shape()
                    .map(shape -> outline(shape, text))
                    .orElseGet(() -> new Found(Optional.empty(), reading.problems()));
        } catch (UnreadableFile e) {
            return new Found(Optional.empty(), List.of(e.problem(path.toString())));
        }
    }

    private Found outline(AirfoilShape shape, String text) {
        ComputedAirfoil method = method();
        Optional<Airfoil> computed = method.of(shape, candidates(), text);
        return new Found(
                computed.isPresent()
                        ? computed
                        : method.standIn(SurrogateAirfoil.of(shape), candidates(), text)
                                .map(airfoil -> airfoil.with(shape))
                                .map(airfoil -> method.whyNot(shape)
                                        .map(airfoil::notComputed)
                                        .orElse(airfoil)),
                List.of());
    }

    private Found standIn(SurrogateAirfoil likeness, String text) {
        return new Found(method().standIn(likeness, candidates(), text), List.of());
    }

    private static ComputedAirfoil method() {
        return new ComputedAirfoil(LearnedAirfoils.load());
    }

    private List<Airfoil> candidates() {
        List<Airfoil> candidates = new ArrayList<>();
        for (String name : library.names()) {
            library.find(new AirfoilName(name)).ifPresent(candidates::add);
        }
        return candidates;
    }
}
