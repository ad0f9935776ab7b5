package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Stick;
import throwline.section.MeasuredSections;

/** What a flight answers does not depend on what it was asked before, to the last bit. */
class AnyOrderTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();

    private static Map<String, Function<Flight, String>> questions(Model model, Stall stall, Pack pack) {
        Map<String, Function<Flight, String>> all = new LinkedHashMap<>();
        all.put(
                "stall",
                f -> f.stall(pack)
                        .map(s -> s.speed() + " " + s.attitude().elevator())
                        .orElse(""));
        for (double times : new double[] {1.05, 1.3, 1.8}) {
            all.put(
                    "descent " + times,
                    f -> text(f.descent(pack, stall, times * stall.speed()).attitude()));
        }
        all.put(
                "descents",
                f -> f.descents(pack, stall, speeds(stall)).stream()
                        .map(descent -> text(descent.attitude()))
                        .toList()
                        .toString());
        all.put("straight down", f -> f.noseDownSpeed(pack, stall).toString());
        all.put("turn", f -> f.turn(pack, stall, 0.7).map(TurnStall::speed).toString());
        Attitude steady = stall.attitude();
        all.put("gust", f -> f.gustMargin(pack, steady).toString());
        all.put("stability", f -> f.stability(pack, steady).toString());
        model.sticks().forEach(stick -> {
            if (stick instanceof Stick.Roll roll) {
                all.put(stick.name(), f -> f.roll(roll, pack, steady).toString());
                all.put(
                        stick.name() + " lets go",
                        f -> f.lettingGo(roll, pack, stall).toString());
            }
        });
        all.put("servos", f -> f.servoLoads(pack, stall, 20, Optional.empty()).toString());
        all.put(
                "standing",
                f -> f.standing(pack, stall, 20, Optional.of(steady), 1).toString());
        return all;
    }

    private static List<Double> speeds(Stall stall) {
        return Stream.of(1.02, 1.1, 1.3, 1.6, 2.0, 2.5)
                .map(times -> times * stall.speed())
                .toList();
    }

    /** Several speeds asked together are those asked one by one, to the tolerances of angle and elevator. */
    @ParameterizedTest
    @CsvSource({"orchard, 0", "orchard, 3", "ridgeline, 1", "saltmarsh, 2"})
    void descentsTogetherAreDescentsAlone(String name, int setUp) {
        ReadModel.Project project = (ReadModel.Project) ModelFile.read(Path.of("examples", name + ".yaml"), AIRFOILS);
        Model model = project.model();
        Flight flight = new Flight(
                new Airframe(model, AIRFOILS, new MeasuredSections()),
                model.setUps().get(setUp));
        Pack pack = model.packs().get(0);
        Stall stall = flight.stall(pack).orElseThrow();
        List<Double> speeds = speeds(stall);
        List<Descent> together = flight.descents(pack, stall, speeds);
        assertThat(together).hasSameSizeAs(speeds);
        assertThat(together).filteredOn(descent -> descent.steady().isPresent()).hasSizeGreaterThan(3);
        for (int k = 0; k < speeds.size(); k++) {
            Descent alone = flight.descent(pack, stall, speeds.get(k));
            assertThat(together.get(k).outcome()).isEqualTo(alone.outcome());
            assertThat(together.get(k).attitude().map(Attitude::speed))
                    .isEqualTo(alone.attitude().map(Attitude::speed));
            if (alone.steady().isPresent()) {
                Attitude expected = alone.steady().get();
                Attitude found = together.get(k).steady().orElseThrow();
                assertThat(found.alpha()).isCloseTo(expected.alpha(), within(1e-5));
                assertThat(found.elevator()).isCloseTo(expected.elevator(), within(1e-4));
            }
        }
    }

    private static String text(Optional<Attitude> attitude) {
        return attitude.map(a -> a.alpha() + " " + a.lift() + " " + a.drag() + " " + a.elevator())
                .orElse("none");
    }

    @ParameterizedTest
    @CsvSource({"orchard, 0", "orchard, 3", "ridgeline, 1", "saltmarsh, 2"})
    void anAnswerIsTheSameInAnyOrder(String name, int setUp) {
        ReadModel.Project project = (ReadModel.Project) ModelFile.read(Path.of("examples", name + ".yaml"), AIRFOILS);
        Model model = project.model();
        Airframe airframe = new Airframe(model, AIRFOILS, new MeasuredSections());
        Pack pack = model.packs().get(0);
        Flight first = new Flight(airframe, model.setUps().get(setUp));
        Stall stall = first.stall(pack).orElseThrow();
        Map<String, Function<Flight, String>> questions = questions(model, stall, pack);
        Map<String, String> alone = new LinkedHashMap<>();
        questions.forEach((asked, question) -> alone.put(
                asked, question.apply(new Flight(airframe, model.setUps().get(setUp)))));
        List<String> order = new ArrayList<>(questions.keySet());
        Random random = new Random(20);
        for (int k = 0; k < 3; k++) {
            Collections.shuffle(order, random);
            for (String asked : order) {
                Function<Flight, String> question = questions.getOrDefault(asked, f -> "");
                assertThat(question.apply(first)).as(asked).isEqualTo(alone.get(asked));
            }
        }
    }
}
