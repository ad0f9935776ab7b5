package throwline.liftingline;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import throwline.model.AirfoilName;
import throwline.model.Wing;
import throwline.model.WingSection;
import throwline.section.SectionCurve;

/** Writes the wing's part of the validation folder; run by name only, see the readme there. */
class WingValidation {

    private static final Path FOLDER = Path.of("validation", "wing");
    private static final int[] STRIPS = {40, 80, 160, 320};

    private static void write(String name, String text) throws IOException {
        Files.createDirectories(FOLDER);
        Files.writeString(FOLDER.resolve(name), text, StandardCharsets.UTF_8);
    }

    @Test
    void convergence() throws IOException {
        StringBuilder table = new StringBuilder("case,strips_40,strips_80,strips_160,strips_320,order\n");
        LinesSvg picture = new LinesSvg(
                "Error against exact lifting-line theory over the number of strips",
                "strips over the whole span",
                "relative error",
                true);
        for (ConvergenceCase each : ConvergenceCase.values()) {
            List<double[]> points = new ArrayList<>();
            double[] errors = new double[STRIPS.length];
            StringBuilder row = new StringBuilder(each.toString());
            for (int k = 0; k < STRIPS.length; k++) {
                errors[k] = each.error(STRIPS[k]);
                points.add(new double[] {STRIPS[k], Math.abs(errors[k])});
                row.append(String.format(Locale.ROOT, ",%.3e", errors[k]));
            }
            String order = each.isFitted()
                    ? String.format(Locale.ROOT, "%.2f", ConvergenceCase.order(STRIPS, errors))
                    : "either sign";
            table.append(row).append(',').append(order).append('\n');
            picture.line(each.shown() + ", " + (each.isFitted() ? "order " : "") + order, points, true);
        }
        write("convergence.csv", table.toString());
        write(
                "convergence.svg",
                picture.draw(new double[] {40, 80, 160, 320}, new double[] {1e-7, 1e-6, 1e-5, 1e-4, 1e-3, 1e-2}));
    }

    /** The Clark Y wing of Noyes: the tunnel's wing with the library's sections, and with the section maximum that the tunnel had. */
    @Test
    void clarkYOfAspectRatioSix() throws IOException {
        double inch = 0.0254;
        AirfoilName name = new AirfoilName("clark-y-b");
        List<WingSection> sections =
                List.of(new WingSection(0, 10 * inch, name, 0, 0), new WingSection(30 * inch, 10 * inch, name, 0, 0));
        MeasuredWing wing = new MeasuredWing(new Wing(0, 0, 0, sections, List.of()), 609_000 / (10 * inch), 80);
        List<SectionCurve> library = wing.curves(0, 0, 0);
        List<SectionCurve> raised = library.stream()
                .<SectionCurve>map(c -> new ShiftedStallCurve(c, 1.32 - c.maxLift()))
                .toList();
        StringBuilder table = new StringBuilder("incidence_deg,lift,drag,lift_with_section_maximum_1.32\n");
        List<double[]> first = new ArrayList<>();
        List<double[]> second = new ArrayList<>();
        double leastDrag = Double.POSITIVE_INFINITY;
        for (double degrees = -8; degrees <= 24; degrees += 0.5) {
            StripForces forces = StripForces.of(wing.at(library, Math.toRadians(degrees)));
            double known =
                    StripForces.of(wing.at(raised, Math.toRadians(degrees))).liftCoefficient();
            first.add(new double[] {degrees, forces.liftCoefficient()});
            second.add(new double[] {degrees, known});
            leastDrag = Math.min(leastDrag, forces.dragCoefficient());
            table.append(String.format(
                    Locale.ROOT,
                    "%.1f,%.4f,%.5f,%.4f%n",
                    degrees,
                    forces.liftCoefficient(),
                    forces.dragCoefficient(),
                    known));
        }
        StallMarks marks = wing.search(library).orElseThrow();
        StallMarks known = wing.search(raised).orElseThrow();
        String summary = String.format(
                Locale.ROOT,
                "case,onset,checked_maximum,plateau%nmeasured (NACA abstract by Noyes; READ),,1.250,%n"
                        + "library sections,%.3f,%.3f,%.3f%nsection maximum 1.32,%.3f,%.3f,%.3f%n"
                        + "%ncase,least_drag%nmeasured (same; READ),0.0155%nlibrary sections,%.4f%n",
                marks.onset().lift(),
                marks.checkedMaximum().lift(),
                marks.plateau().lift(),
                known.onset().lift(),
                known.checkedMaximum().lift(),
                known.plateau().lift(),
                leastDrag);
        write("clark-y-aspect-6.csv", table.toString());
        write("clark-y-aspect-6-marks.csv", summary);
        LinesSvg picture = new LinesSvg(
                "Clark Y, aspect ratio 6, Reynolds number 609 000", "incidence, degrees", "lift coefficient", false);
        picture.line("library sections", first, false);
        picture.line("section maximum 1.32", second, false);
        picture.line("measured maximum 1.25 (NACA)", List.of(new double[] {-8, 1.25}, new double[] {24, 1.25}), false);
        write("clark-y-aspect-6.svg", picture.draw(new double[] {-8, -4, 0, 4, 8, 12, 16, 20, 24}, new double[] {
            -0.4, -0.2, 0, 0.2, 0.4, 0.6, 0.8, 1, 1.2, 1.4
        }));
    }

    /** Marks of one invented wing over flap angle and number of strips. */
    @Test
    void stallMarks() throws IOException {
        StringBuilder table = new StringBuilder("flaps_deg,strips,onset,checked_maximum,plateau,place_of_onset\n");
        List<double[]> onset = new ArrayList<>();
        List<double[]> checked = new ArrayList<>();
        List<double[]> plateau = new ArrayList<>();
        Wing shape = MeasuredWing.tapered("clark-y-b", 7, 0.7, 0, 0.5);
        for (int strips : new int[] {60, 120, 240}) {
            MeasuredWing wing = new MeasuredWing(shape, 8e5, strips);
            for (int flaps = 0; flaps <= 60; flaps += 5) {
                Optional<StallMarks> found = wing.search(wing.curves(Math.toRadians(flaps), 0, 0));
                StallMarks marks = found.orElseThrow();
                table.append(String.format(
                        Locale.ROOT,
                        "%d,%d,%.4f,%.4f,%.4f,%.2f%n",
                        flaps,
                        strips,
                        marks.onset().lift(),
                        marks.checkedMaximum().lift(),
                        marks.plateau().lift(),
                        Math.abs(wing.grid().control(marks.strip()))));
                if (strips == 120) {
                    onset.add(new double[] {flaps, marks.onset().lift()});
                    checked.add(new double[] {flaps, marks.checkedMaximum().lift()});
                    plateau.add(new double[] {flaps, marks.plateau().lift()});
                }
            }
        }
        write("stall-marks.csv", table.toString());
        LinesSvg picture = new LinesSvg(
                "The three marks of the stall over the angle of the flaps (invented wing)",
                "flaps down, degrees",
                "lift coefficient",
                false);
        picture.line("half of the area past its stall", plateau, true);
        picture.line("largest lift, falling curves", checked, true);
        picture.line("first part reaches its stall", onset, true);
        write(
                "stall-marks.svg",
                picture.draw(new double[] {0, 10, 20, 30, 40, 50, 60}, new double[] {1, 1.2, 1.4, 1.6, 1.8, 2}));
    }
}
