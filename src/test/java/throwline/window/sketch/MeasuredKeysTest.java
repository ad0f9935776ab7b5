package throwline.window.sketch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.input.KeyForm;
import throwline.input.ModelText;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Assumption;
import throwline.section.AirfoilLibrary;
import throwline.units.Dimension;
import throwline.units.Display;
import throwline.units.QuantityReader;
import throwline.units.ReadQuantity;
import throwline.units.Unit;
import throwline.words.Words;

/** What a drawing points at is as long, or turned as far, as the file says; no key is forgotten. */
class MeasuredKeysTest {

    /** Lengths that are not on the model: how far a propeller would screw itself on, and what is on the ground. */
    private static final Set<String> NOT_ON_THE_MODEL =
            Set.of("propeller.pitch", "field.length", "field.obstacle.height", "field.height above sea");

    /** A share that is no share of a length. */
    private static final Set<String> NO_LENGTH = Set.of("motor.cruise");

    private static final Map<String, Dimension> KINDS =
            Map.of("length", Dimension.LENGTH, "angle", Dimension.ANGLE, "share", Dimension.FRACTION);
    private static final Set<String> THROWS = Set.of("deflection", "throws", "throw");

    private final MeasuredKeys keys = new MeasuredKeys();
    private final AirfoilLibrary airfoils = new PackedAirfoils();

    /** Kind of every row, read from the table itself. */
    private static Map<String, String> kinds() {
        try {
            Map<String, String> kinds = new LinkedHashMap<>();
            Files.readString(Path.of("src/main/resources/throwline/keys.txt"))
                    .lines()
                    .filter(line -> !line.startsWith("#") && line.contains("|"))
                    .map(line -> line.split("\\|"))
                    .forEach(cells -> kinds.put(cells[0].strip(), cells[1].strip()));
            return kinds;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void every_length_angle_and_throw_is_pointed_at_or_is_not_on_the_model() {
        Set<String> measures = kinds().entrySet().stream()
                .filter(row -> KINDS.containsKey(row.getValue()) || THROWS.contains(row.getValue()))
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> stated = new TreeSet<>(keys.rows());
        stated.addAll(NOT_ON_THE_MODEL);
        stated.addAll(NO_LENGTH);
        assertThat(stated).isEqualTo(measures);
        assertThat(keys.rows()).doesNotContainAnyElementsOf(NOT_ON_THE_MODEL).doesNotContainAnyElementsOf(NO_LENGTH);
    }

    private static String text(String example) {
        try {
            return Files.readString(Path.of("examples", example + ".yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private ReadModel read(ModelText text) {
        return text.read("model.yaml", airfoils);
    }

    private Optional<Sketch> sketch(KeyForm.Field field, ReadModel.Project project) {
        return keys.of(field.row(), field.path(), project.model(), airfoils);
    }

    /** What stands at a field or is taken for it, in SI units; empty where it is no quantity. */
    private static Optional<Double> value(KeyForm.Field field, ReadModel.Project project, Dimension dimension) {
        String assumed = project.assumed().stream()
                .filter(each -> each.path().equals(field.place()))
                .map(Assumption::value)
                .findFirst()
                .orElse("");
        String text = field.written().isEmpty() ? assumed : field.written();
        return QuantityReader.read(text, dimension) instanceof ReadQuantity.Amount amount
                ? Optional.of(amount.quantity().value())
                : Optional.empty();
    }

    private static double pointedAt(Sketch sketch, Dimension dimension) {
        Measured measured = sketch.measured().get(0);
        return dimension == Dimension.FRACTION
                ? measured.size() / ((Measured.Length) measured).whole()
                : measured.size();
    }

    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void the_drawing_is_as_large_as_the_value(String example) {
        ModelText text = new ModelText(text(example));
        ReadModel.Project project = (ReadModel.Project) read(text);
        Map<String, String> kinds = kinds();
        int compared = 0;
        for (KeyForm.Field field : KeyForm.of(text)) {
            Optional<Dimension> dimension = Optional.ofNullable(KINDS.get(kinds.get(field.row())));
            Optional<Sketch> sketch = sketch(field, project);
            Optional<Double> value = dimension.flatMap(d -> value(field, project, d));
            if (sketch.isPresent() && value.isPresent()) {
                // What is assumed is told in rounded figures.
                double slack = field.written().isEmpty() ? 6e-4 + 0.01 * Math.abs(value.get()) : 1e-9;
                assertThat(pointedAt(sketch.get(), dimension.get()))
                        .as(field.place())
                        .isCloseTo(Math.abs(value.get()), within(slack));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(25);
    }

    /** Every value that stands in the file, made larger by a fiftieth: the drawing points at the larger one. */
    @Test
    void the_drawing_follows_the_value() {
        ModelText text = new ModelText(text("orchard"));
        Map<String, String> kinds = kinds();
        int compared = 0;
        for (KeyForm.Field field : KeyForm.of(text)) {
            Optional<Dimension> dimension = Optional.ofNullable(KINDS.get(kinds.get(field.row())));
            if (field.written().isEmpty() || dimension.isEmpty() || !keys.rows().contains(field.row())) {
                continue;
            }
            String number = field.written().split(" ", 2)[0];
            String unit = field.written().substring(number.length());
            double larger = 1.02 * Double.parseDouble(number);
            ModelText changed = text.with(field.path(), larger + unit).orElseThrow();
            if (read(changed) instanceof ReadModel.Project project) {
                double expected = ((ReadQuantity.Amount) QuantityReader.read(larger + unit, dimension.get()))
                        .quantity()
                        .value();
                assertThat(pointedAt(sketch(field, project).orElseThrow(), dimension.get()))
                        .as(field.place())
                        .isCloseTo(Math.abs(expected), within(1e-9));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(30);
    }

    private Measured.Length length(String row, String... path) {
        ReadModel.Project project = (ReadModel.Project) read(new ModelText(text("orchard")));
        return (Measured.Length) keys.of(row, List.of(path), project.model(), airfoils)
                .orElseThrow()
                .measured()
                .get(0);
    }

    private static Point2D at(double x, double y) {
        return new Point2D.Double(x, y);
    }

    /** Places on the drawing from above, worked out by hand from the file: right of the middle, behind the leading edge. */
    @ParameterizedTest
    @CsvSource({
        "packs.*.balance, packs/small/balance, 0, 0, 0, 0.088",
        "wing.sections[].chord, wing/sections/[2]/chord, 0.92, 0.015, 0.92, 0.25",
        "wing.sections[].set back, wing/sections/[2]/set back, 0.92, 0, 0.92, 0.015",
        "tail.arm, tail/arm, 0.28, 0, 0.28, 0.8",
        "tail.span, tail/span, -0.28, 0.965, 0.28, 0.965",
        "tail.elevator.chord, tail/elevator/chord, 0.28, 0.899, 0.28, 0.965",
    })
    void it_points_at_the_right_place(String row, String path, double fromX, double fromY, double toX, double toY) {
        Measured.Length length = length(row, path.split("/"));
        assertThat(length.from().distance(at(fromX, fromY))).isLessThan(1e-9);
        assertThat(length.to().distance(at(toX, toY))).isLessThan(1e-9);
    }

    /** A rod ends in both holes, which lie as far from their axes as the file says. */
    @Test
    void the_linkage_closes() {
        Measured.Length arm = length("servos.*.arm", "servos", "flaps", "arm");
        Measured.Length horn = length("servos.*.horn", "servos", "flaps", "horn");
        Measured.Length rod = length("servos.*.rod", "servos", "flaps", "rod");
        assertThat(rod.from()).isEqualTo(arm.to());
        assertThat(rod.to()).isEqualTo(horn.to());
        assertThat(rod.size()).isCloseTo(0.080, within(1e-12));
        assertThat(horn.from().getY()).isZero();
    }

    /** Throws go to the side that the file tells: y is down the page, so down turns clockwise. */
    @Test
    void throws_go_the_right_way() {
        ReadModel.Project project = (ReadModel.Project) read(new ModelText(text("orchard")));
        List<Double> turned = List.of(
                        keys.of("set-ups.*.*", List.of("set-ups", "airbrake", "ailerons"), project.model(), airfoils),
                        keys.of("set-ups.*.*", List.of("set-ups", "airbrake", "flaps"), project.model(), airfoils),
                        keys.of("sticks.*.*", List.of("sticks", "low rates", "ailerons"), project.model(), airfoils),
                        keys.of(
                                "tail.elevator.travel",
                                List.of("tail", "elevator", "travel"),
                                project.model(),
                                airfoils))
                .stream()
                .flatMap(sketch -> sketch.orElseThrow().measured().stream())
                .map(Measured.Angle.class::cast)
                .map(angle -> Math.toDegrees(angle.to() - angle.from()))
                .toList();
        List<Double> expected = List.of(-14.0, 55.0, -12.0, 10.0, -25.0, 25.0);
        assertThat(turned).hasSameSizeAs(expected);
        for (int i = 0; i < expected.size(); i++) {
            assertThat(turned.get(i)).isCloseTo(expected.get(i), within(1e-9));
        }
    }

    /** A small measure is drawn so large that it can be seen; what is drawn always holds it. */
    @Test
    void every_measure_can_be_seen() {
        ModelText text = new ModelText(text("orchard"));
        ReadModel.Project project = (ReadModel.Project) read(text);
        for (KeyForm.Field field : KeyForm.of(text)) {
            sketch(field, project)
                    .ifPresent(sketch -> sketch.measured().stream()
                            .filter(Measured.Length.class::isInstance)
                            .map(Measured.Length.class::cast)
                            .filter(length -> length.size() > 0)
                            .forEach(length -> {
                                double side = Math.max(
                                        sketch.frame().getWidth(),
                                        sketch.frame().getHeight());
                                assertThat(length.size() / side)
                                        .as(field.place())
                                        .isBetween(0.049, 1.001);
                                double slack = 1e-9;
                                assertThat(sketch.frame()
                                                                .outcode(
                                                                        length.from()
                                                                                .getX(),
                                                                        length.from()
                                                                                .getY())
                                                        == 0
                                                || sketch.frame()
                                                        .intersectsLine(
                                                                length.from().getX() - slack,
                                                                length.from().getY() - slack,
                                                                length.from().getX() + slack,
                                                                length.from().getY() + slack))
                                        .as(field.place())
                                        .isTrue();
                            }));
        }
    }

    @Test
    void what_is_not_there_is_not_pointed_at() {
        String text = text("orchard").replaceAll("(?m)^(wheels|propeller|motor):.*$", "");
        ReadModel.Project project = (ReadModel.Project) read(new ModelText(text));
        assertThat(keys.of("wheels.diameter", List.of("wheels", "diameter"), project.model(), airfoils))
                .isEmpty();
        assertThat(keys.of("propeller.height", List.of("propeller", "height"), project.model(), airfoils))
                .isEmpty();
        assertThat(keys.of(
                        "wing.surfaces.*.from", List.of("wing", "surfaces", "gone", "from"), project.model(), airfoils))
                .isEmpty();
        assertThat(keys.of("name", List.of("name"), project.model(), airfoils)).isEmpty();
        assertThat(keys.plain(project.model()).measured()).isEmpty();
    }

    /** Labels in the units of the reader: 88 mm, 2.5 deg, and a share of a chord (25 % of 281.25 mm at the flaps' middle). */
    @Test
    void labels_are_in_the_units_that_are_read() {
        SketchText text = new SketchText(Words.load(), Display.metric());
        SketchText inches = new SketchText(Words.load(), Display.metric().with(Unit.INCH));
        Measured.Length balance = length("packs.*.balance", "packs", "small", "balance");
        assertThat(text.label(balance)).isEqualTo("88 mm");
        assertThat(inches.label(balance)).isEqualTo("3.46 in");
        assertThat(text.label(length("wing.surfaces.*.chord", "wing", "surfaces", "flaps", "chord")))
                .isEqualTo("25 %, 70.3 mm");
        assertThat(text.label(new Measured.Angle(at(0, 0), 0, Math.toRadians(-2.5), 1, true)))
                .isEqualTo("2.5 deg");
        assertThat(text.label(new Measured.Angle(at(0, 0), 0, 1, 1, false))).isEqualTo("not given");
    }

    @Test
    void what_the_file_does_not_tell_is_drawn_but_not_told() {
        String text = text("orchard").replace("arm: 14 mm, ", "");
        ReadModel.Project project = (ReadModel.Project) read(new ModelText(text));
        Measured arm = keys.of("servos.*.arm", List.of("servos", "flaps", "arm"), project.model(), airfoils)
                .orElseThrow()
                .measured()
                .get(0);
        assertThat(arm.known()).isFalse();
        assertThat(arm.size()).isPositive();
    }
}
