package throwline.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import throwline.input.FlightsFile;
import throwline.input.ModelFile;
import throwline.input.NamedAirfoils;
import throwline.input.PackedAirfoils;
import throwline.input.ReadFlights;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.Comparison;
import throwline.study.ComparisonStudy;
import throwline.study.LearnStudy;
import throwline.study.Learnt;
import throwline.study.Lessons;
import throwline.study.SetUpResult;
import throwline.window.session.HandComputer;
import throwline.window.session.HandQuestion;
import throwline.window.session.Movable;

/** Numbers at hand after flights are those of the commands, and only for set-ups that stand as they were flown. */
class FlownAnswerTest {

    private static final Path FOLDER = Path.of("examples", "season");

    private final AirfoilLibrary airfoils = new NamedAirfoils(new PackedAirfoils(), FOLDER);
    private final Model model = ((ReadModel.Project) ModelFile.read(FOLDER.resolve("orchard.yaml"), airfoils)).model();
    private final Pack pack = model.packs().get(0);
    private final Comparison plain =
            new ComparisonStudy(new MeasuredSections(), Bands.load()).compare(model, airfoils, model.packs());
    private final Learnt learnt = learnt();

    private Learnt learnt() {
        ReadFlights.Notes notes = (ReadFlights.Notes) FlightsFile.readBeside(FOLDER.resolve("orchard.yaml"), model);
        return new LearnStudy(new MeasuredSections(), Bands.load())
                .learn(plain, airfoils, notes.notes(), notes.logs())
                .map(Lessons::learnt)
                .orElseThrow();
    }

    private HandComputer.Answer answer(Model of, SetUpResult now, Optional<SetUpResult> against) {
        HandQuestion question =
                new HandQuestion(1, of, airfoils, pack, now.setUp(), against.map(SetUpResult::setUp), 0);
        return new HandComputer.Answer(question, plain.density(), now, against, Optional.empty(), false);
    }

    @Test
    void a_set_up_as_it_was_flown_has_the_numbers_after_the_flights() {
        SetUpResult clean = plain.packs().get(0).setUps().get(0);
        SetUpResult other = plain.packs().get(0).setUps().get(2);
        FlownAnswer flown = FlownAnswer.of(answer(model, other, Optional.of(clean)), of -> Optional.of(learnt));
        assertThat(flown.answer().now())
                .isEqualTo(learnt.after(pack.name(), other.setUp().name()).orElseThrow())
                .isNotEqualTo(other);
        assertThat(flown.answer().against())
                .isEqualTo(learnt.after(pack.name(), clean.setUp().name()));
        assertThat(flown.before()).hasValue(other);
    }

    @Test
    void a_set_up_that_a_hand_has_moved_has_not() {
        SetUpResult clean = plain.packs().get(0).setUps().get(0);
        SetUp moved = Movable.of(model).get(0).moved(clean.setUp(), 0.1);
        SetUpResult result = new ComparisonStudy(new MeasuredSections(), Bands.load())
                .compare(
                        model.withSetUps(java.util.List.of(moved, model.setUps().get(1))),
                        airfoils,
                        java.util.List.of(pack))
                .packs()
                .get(0)
                .setUps()
                .get(0);
        HandComputer.Answer answer = answer(model, result, Optional.of(clean));
        assertThat(FlownAnswer.of(answer, of -> Optional.of(learnt)))
                .isEqualTo(new FlownAnswer(answer, Optional.empty()));
    }

    @Test
    void without_flights_nothing_changes() {
        HandComputer.Answer answer = answer(model, plain.packs().get(0).setUps().get(1), Optional.empty());
        assertThat(FlownAnswer.of(answer, of -> Optional.empty())).isEqualTo(new FlownAnswer(answer, Optional.empty()));
    }
}
