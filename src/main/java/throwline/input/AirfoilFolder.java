package throwline.input;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import throwline.section.Airfoil;
import throwline.section.AirfoilShape;
import throwline.section.PolarRun;
import throwline.words.Message;

/**
 * An airfoil of the user's own: a folder with one polar file a run, and perhaps one coordinate file (ending in .dat) that
 * tells thickness and camber. Without it the headers may say {@code # thickness_pct:}, {@code # camber_pct:} and {@code #
 * moment:}; what is not said is taken as 12 % thick with camber from the zero-lift angle.
 */
final class AirfoilFolder {

    private static final double USUAL_THICKNESS = 0.12;

    /** One per cent of camber turns the zero-lift angle by about one degree (thin-airfoil theory). */
    private static final double CAMBER_PER_DEGREE = 0.01;

    /** Moment over camber of an ordinary camber line, 0.85 of theory (practice). */
    private static final double MOMENT_PER_CAMBER = -2.3;

    private final List<Problem> problems = new ArrayList<>();
    private final List<PolarRun> runs = new ArrayList<>();
    private OptionalDouble thickness = OptionalDouble.empty();
    private OptionalDouble camber = OptionalDouble.empty();
    private OptionalDouble moment = OptionalDouble.empty();

    /**
     * What came out of a folder.
     *
     * @param airfoil the airfoil; empty where there are problems
     * @param problems file by file
     */
    record Reading(Optional<Airfoil> airfoil, List<Problem> problems) {
        Reading {
            problems = List.copyOf(problems);
        }
    }

    static Reading read(Path folder, String name) {
        AirfoilFolder reader = new AirfoilFolder();
        reader.readFiles(folder);
        boolean clean = reader.runs.stream().anyMatch(run -> run.deflection() == 0 && run.kind() == PolarRun.Kind.DRAG);
        if (reader.problems.isEmpty() && !clean) {
            reader.problems.add(new Problem(folder.toString(), 0, 0, "", Message.of("input.polar.clean")));
        }
        return new Reading(
                reader.problems.isEmpty() ? Optional.of(reader.airfoil(name)) : Optional.empty(), reader.problems);
    }

    private void readFiles(Path folder) {
        try (Stream<Path> found = Files.list(folder)) {
            for (Path file : found.filter(Files::isRegularFile).sorted().toList()) {
                String end = file.getFileName().toString().toLowerCase(Locale.ROOT);
                try {
                    if (end.endsWith(".csv")) {
                        readPolar(file);
                    } else if (end.endsWith(".dat")) {
                        readShape(file);
                    }
                } catch (UnreadableFile e) {
                    problems.add(e.problem(file.toString()));
                }
            }
        } catch (IOException e) {
            problems.add(new Problem(folder.toString(), 0, 0, "", Message.of("input.file.io")));
        }
    }

    private void readPolar(Path file) throws UnreadableFile {
        PolarFile.Reading reading = PolarFile.read(file.toString(), SourceText.read(file));
        problems.addAll(reading.problems());
        reading.run().ifPresent(runs::add);
        thickness = firstOf(thickness, reading.shape().thickness());
        camber = firstOf(camber, reading.shape().camber());
        moment = firstOf(moment, reading.shape().moment());
    }

    private void readShape(Path file) throws UnreadableFile {
        CoordinateFile.Reading reading = CoordinateFile.read(file.toString(), SourceText.read(file));
        problems.addAll(reading.problems());
        if (reading.shape().isPresent()) {
            AirfoilShape shape = reading.shape().get();
            thickness = OptionalDouble.of(shape.thickness());
            camber = OptionalDouble.of(shape.camber());
            moment = firstOf(moment, OptionalDouble.of(0.85 * shape.moment()));
        }
    }

    private static OptionalDouble firstOf(OptionalDouble known, OptionalDouble next) {
        return known.isPresent() ? known : next;
    }

    private Airfoil airfoil(String name) {
        double curved = camber.orElseGet(() -> Math.max(0, -CAMBER_PER_DEGREE * Math.toDegrees(zeroLiftAngle())));
        return new Airfoil(
                name, name, thickness.orElse(USUAL_THICKNESS), curved, moment.orElse(MOMENT_PER_CAMBER * curved), runs);
    }

    /** The least negative crossing of zero lift among the runs at zero deflection, rad. */
    private double zeroLiftAngle() {
        double angle = 0;
        double fastest = 0;
        for (PolarRun run : runs) {
            for (int i = 1; i < run.points().size(); i++) {
                PolarRun.Point below = run.points().get(i - 1);
                PolarRun.Point above = run.points().get(i);
                if (run.deflection() == 0 && run.reynolds() > fastest && below.lift() < 0 && above.lift() >= 0) {
                    fastest = run.reynolds();
                    angle = below.alpha()
                            - below.lift() * (above.alpha() - below.alpha()) / (above.lift() - below.lift());
                }
            }
        }
        return angle;
    }
}
