package throwline.input;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import throwline.model.AirfoilName;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.AirfoilShape;
import throwline.section.PolarRun;

/**
 * The airfoils inside the jar: {@code airfoils.csv} lists them with their other names, {@code files.txt} the runs. An airfoil's runs are read when
 * it is first asked for. Safe for several threads.
 */
public final class PackedAirfoils implements AirfoilLibrary {

    private static final String ROOT = "/throwline/airfoils/";
    private static final int COLUMNS = 9;

    private final Map<String, Entry> byKey = new TreeMap<>();
    private final List<String> files;
    private final Map<String, Airfoil> read = new ConcurrentHashMap<>();

    private record Entry(
            String name,
            double thickness,
            double camber,
            double moment,
            List<String> folders,
            List<String> also,
            String description) {}

    /** Opens the library of the jar. */
    public PackedAirfoils() {
        files = lines("files.txt");
        lines("airfoils.csv").stream().skip(1).map(PackedAirfoils::entry).forEach(this::add);
    }

    private void add(Entry entry) {
        byKey.put(new AirfoilName(entry.name()).key(), entry);
        entry.also().forEach(name -> byKey.put(new AirfoilName(name).key(), entry));
    }

    private static Entry entry(String line) {
        String[] cells = line.split(",", COLUMNS);
        return new Entry(
                cells[0],
                Double.parseDouble(cells[1]) / 100,
                Double.parseDouble(cells[2]) / 100,
                Double.parseDouble(cells[4]),
                List.of(cells[6].split(" ")),
                cells[7].isEmpty() ? List.of() : List.of(cells[7].split(" ")),
                cells[8]);
    }

    private static List<String> lines(String name) {
        return text(name)
                .lines()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .toList();
    }

    private static String text(String name) {
        try (InputStream in = PackedAirfoils.class.getResourceAsStream(ROOT + name)) {
            if (in == null) {
                throw new IllegalStateException("missing from the jar: " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public Optional<Airfoil> find(AirfoilName name) {
        Entry entry = byKey.get(name.key());
        return entry == null ? Optional.empty() : Optional.of(read.computeIfAbsent(entry.name(), n -> airfoil(entry)));
    }

    @Override
    public List<String> names() {
        return byKey.values().stream().map(Entry::name).distinct().sorted().toList();
    }

    private Airfoil airfoil(Entry entry) {
        List<PolarRun> runs = new ArrayList<>();
        for (String folder : entry.folders()) {
            for (String file : files) {
                if (file.startsWith(folder + "/") && file.endsWith(".csv")) {
                    PolarFile.Reading reading = PolarFile.read(file, text(file));
                    runs.add(reading.run()
                            .orElseThrow(() -> new IllegalStateException(
                                    file + ": " + reading.problems().get(0))));
                }
            }
        }
        Airfoil measured =
                new Airfoil(entry.name(), entry.description(), entry.thickness(), entry.camber(), entry.moment(), runs);
        return outline(entry).map(measured::with).orElse(measured);
    }

    private Optional<AirfoilShape> outline(Entry entry) {
        String file = entry.folders().get(0) + "/outline.dat";
        return files.contains(file) ? CoordinateFile.read(file, text(file)).shape() : Optional.empty();
    }
}
