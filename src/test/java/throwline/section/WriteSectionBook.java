package throwline.section;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;
import throwline.section.LeaveOneOut.Figure;
import throwline.section.LeaveOneOut.Miss;
import throwline.section.LeaveOneOut.Place;
import throwline.section.LeaveOneOut.Prediction;
import throwline.section.PolarRun.Point;

/** Writes the tables and pictures of {@code validation/sections}: mvn -Dtest=WriteSectionBook -Dbook=validation/sections test. */
@EnabledIfSystemProperty(named = "book", matches = ".+")
class WriteSectionBook {

    private static final double SLOW = 80_000;

    private final Path folder = Path.of(System.getProperty("book", "target/book"));
    private final PackedAirfoils library = new PackedAirfoils();

    @Test
    void leaveOneOut() throws IOException {
        Files.createDirectories(folder);
        List<Miss> all = new ArrayList<>();
        for (String name : library.names()) {
            Airfoil airfoil = library.find(new AirfoilName(name)).orElseThrow();
            List<Prediction> predictions = LeaveOneOut.predictions(airfoil);
            // The second Clark Y is part of the first.
            if (!name.equals("clarky-b") && !predictions.isEmpty()) {
                all.addAll(LeaveOneOut.of(airfoil));
                draw(airfoil, predictions);
            }
        }
        Files.write(folder.resolve("leave-one-out.csv"), summary(all));
        Files.write(folder.resolve("leave-one-out-by-airfoil.csv"), byAirfoil(all));
    }

    private List<String> summary(List<Miss> all) {
        List<String> lines = new ArrayList<>();
        lines.add(
                "# Every polar predicted from its airfoil's other Reynolds numbers. Errors: share of maximum lift, ln of");
        lines.add("# drag ratio, degrees. mean is predicted minus measured. COMPUTED from the packed polars.");
        lines.add("figure,place,count,median,nine_of_ten,mean");
        for (Figure figure : Figure.values()) {
            row(lines, all, figure, "inside", miss -> miss.place() == Place.INSIDE);
            row(lines, all, figure, "low end", miss -> miss.place() == Place.LOW_END);
            row(lines, all, figure, "high end", miss -> miss.place() == Place.HIGH_END);
            row(lines, all, figure, "ends", miss -> miss.place() != Place.INSIDE);
            row(lines, all, figure, "below 80 000", miss -> miss.reynolds() < SLOW);
        }
        return lines;
    }

    private List<String> byAirfoil(List<Miss> all) {
        List<String> lines = new ArrayList<>();
        lines.add("# Medians of the same errors, airfoil by airfoil, all places together.");
        lines.add("figure,airfoil,count,median,nine_of_ten,mean");
        for (Figure figure : Figure.values()) {
            for (String name : library.names()) {
                row(lines, all, figure, name, miss -> miss.airfoil().equals(name));
            }
        }
        return lines;
    }

    private static void row(List<String> lines, List<Miss> all, Figure figure, String name, Predicate<Miss> which) {
        List<Miss> misses = all.stream()
                .filter(miss -> miss.figure() == figure)
                .filter(which)
                .toList();
        if (!misses.isEmpty()) {
            lines.add(String.format(
                    Locale.ROOT,
                    "%s,%s,%d,%.4f,%.4f,%.4f",
                    figure.name().toLowerCase(Locale.ROOT),
                    name,
                    misses.size(),
                    LeaveOneOut.quantile(misses, 0.5),
                    LeaveOneOut.quantile(misses, 0.9),
                    misses.stream().mapToDouble(Miss::error).average().orElse(0)));
        }
    }

    private void draw(Airfoil airfoil, List<Prediction> predictions) throws IOException {
        double top = 1.15
                * predictions.stream()
                        .mapToDouble(p -> LiftRun.of(p.run()).peak().lift())
                        .max()
                        .orElse(1);
        SectionPicture.Panel lift = new SectionPicture.Panel(
                airfoil.name() + ": lift, each predicted from the other Reynolds numbers",
                "angle of attack, degrees",
                new double[] {-12, 24},
                "lift coefficient",
                new double[] {-0.9, top});
        SectionPicture.Panel drag = new SectionPicture.Panel(
                airfoil.name() + ": drag",
                "drag coefficient",
                new double[] {0, 0.08},
                "lift coefficient",
                new double[] {-0.9, top});
        for (Prediction prediction : predictions) {
            String name = String.format(Locale.ROOT, "%.0f", prediction.run().reynolds());
            if (prediction.best()) {
                lift.add(name, curve(prediction.predicted(), -12, 24, false), points(prediction.run(), false));
            }
            if (prediction.run().points().stream().anyMatch(point -> point.drag() > 0)) {
                SectionCurve curve = prediction.predicted();
                drag.add(
                        name,
                        curve(curve, -8, Math.toDegrees(curve.stallAngle()), true),
                        points(prediction.run(), true));
            }
        }
        new SectionPicture().with(lift).with(drag).write(folder.resolve(airfoil.name() + ".png"));
    }

    @Test
    void flapByMethod() throws IOException {
        Files.createDirectories(folder);
        SectionPicture.Panel lift = new SectionPicture.Panel(
                "E214C, flap 6 degrees up: lift by the method alone",
                "angle of attack, degrees",
                new double[] {-8, 16},
                "lift coefficient",
                new double[] {-0.6, 1.4});
        SectionPicture.Panel drag = new SectionPicture.Panel(
                "E214C, flap 6 degrees up: drag",
                "drag coefficient",
                new double[] {0, 0.06},
                "lift coefficient",
                new double[] {-0.6, 1.4});
        List<String> table = new ArrayList<>();
        table.add(
                "# E214C with its flap 6 degrees up by the method alone against SoarTech 8 (READ). Chord fraction 0.20.");
        table.add("reynolds,alpha_deg,lift_measured,lift_method,drag_measured,drag_method_at_that_lift");
        for (PolarRun run : FlapByMethodTest.flapUp()) {
            SectionCurve curve = FlapByMethodTest.byMethod(run, 0.20);
            String name = String.format(Locale.ROOT, "%.0f", run.reynolds());
            lift.add(name, curve(curve, -8, 16, false), points(run, false));
            drag.add(name, curve(curve, -6, Math.toDegrees(curve.stallAngle()), true), points(run, true));
            for (Point point : run.points()) {
                table.add(String.format(
                        Locale.ROOT,
                        "%.0f,%.2f,%.3f,%.3f,%.4f,%.4f",
                        run.reynolds(),
                        Math.toDegrees(point.alpha()),
                        point.lift(),
                        curve.lift(point.alpha()),
                        point.drag(),
                        curve.drag(LeaveOneOut.angleOf(curve, point.lift()))));
            }
        }
        new SectionPicture().with(lift).with(drag).write(folder.resolve("e214c-flap-by-method.png"));
        Files.write(folder.resolve("e214c-flap-by-method.csv"), table);
    }

    private static List<double[]> curve(SectionCurve curve, double from, double to, boolean drag) {
        List<double[]> line = new ArrayList<>();
        for (double degrees = from; degrees <= to; degrees += 0.1) {
            double alpha = Math.toRadians(degrees);
            line.add(new double[] {drag ? curve.drag(alpha) : degrees, curve.lift(alpha)});
        }
        return line;
    }

    private static List<double[]> points(PolarRun run, boolean drag) {
        return run.points().stream()
                .map(point -> new double[] {drag ? point.drag() : Math.toDegrees(point.alpha()), point.lift()})
                .toList();
    }
}
