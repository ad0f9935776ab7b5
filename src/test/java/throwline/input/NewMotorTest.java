package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import throwline.model.Assumption;
import throwline.model.Battery;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Propeller;
import throwline.words.Words;

/** Motor, blades and batteries of an interview. */
class NewMotorTest {

    private final NewModelFile file = new NewModelFile(Words.load(), new FolderNames());

    @Test
    void aMotorThatIsAnsweredCanBeFlown() {
        ReadModel.Project project = (ReadModel.Project)
                TestFile.read(file.from(NewModelFileTest.interview(NewModelFileTest.METRIC)), "new.yaml");
        Model model = project.model();
        assertThat(model.motor().orElseThrow().speedConstant()).hasValue(620);
        assertThat(model.propeller().map(Propeller::kind)).contains(Propeller.Kind.THIN_ELECTRIC);
        assertThat(model.packs()).allMatch(model::isPowered);
        Pack large = model.packs().get(0);
        assertThat(large.battery()).contains(new Battery(4, 4 * 3600));
        assertThat(model.packs().get(1).battery().map(Battery::cells)).contains(3);
        assertThat(project.assumed()).extracting(Assumption::path).contains("packs.small.capacity");
        assertThat(project.assumed()).extracting(Assumption::path).doesNotContain("packs.large.capacity");
    }

    @Test
    void whoDoesNotKnowTheMotorIsAskedNoMoreOfIt() {
        Map<String, String> answers = new HashMap<>(NewModelFileTest.METRIC);
        answers.put("kv", "not known");
        String text = file.from(NewModelFileTest.interview(answers));
        assertThat(NewModelFileTest.interview(answers).answers())
                .doesNotContainKeys("kind", "cells", "capacity", "cells2", "capacity2");
        assertThat(text).doesNotContain("motor", "cells", "capacity", "kind");
        Model model = ((ReadModel.Project) TestFile.read(text, "new.yaml")).model();
        assertThat(model.packs()).noneMatch(model::isPowered);
    }

    @Test
    void nothingIsAskedOfAMotorWithoutAPropeller() {
        Map<String, String> answers = new HashMap<>(NewModelFileTest.METRIC);
        answers.put("propeller", "none");
        assertThat(NewModelFileTest.interview(answers).answers())
                .containsKey("wheels")
                .doesNotContainKeys("pitch", "kv", "kind", "cells", "cells2");
    }

    @Test
    void oneBatteryMayBeKnownAndTheOtherNot() {
        Map<String, String> answers = new HashMap<>(NewModelFileTest.METRIC);
        answers.put("cells", "?");
        Model model =
                ((ReadModel.Project) TestFile.read(file.from(NewModelFileTest.interview(answers)), "new.yaml")).model();
        assertThat(model.packs()).extracting(model::isPowered).containsExactly(false, true);
    }

    @Test
    void oddAnswersOfAMotorAreAskedForAgainWithTheReadersSentence() {
        Interview interview = new Interview();
        Map<String, String> odd = Map.of("kv", "20", "kind", "wooden", "cells", "4S", "capacity", "4000");
        Map<String, String> codes = new HashMap<>();
        for (Optional<Question> question = interview.next(); question.isPresent(); question = interview.next()) {
            String id = question.get().id();
            if (odd.containsKey(id)) {
                interview.answer(odd.get(id)).ifPresent(note -> codes.put(id, note.code() + " " + note.arguments()));
            }
            assertThat(interview.answer(NewModelFileTest.METRIC.getOrDefault(id, "")))
                    .as(id)
                    .isEmpty();
        }
        assertThat(codes)
                .containsEntry("kv", "input.range [20, 50, 10000, 500]")
                .containsEntry("kind", "input.choice [wooden, sport, thin electric, slow fly]")
                .containsEntry("cells", "input.count [4S, 4]")
                .hasEntrySatisfying("capacity", c -> assertThat(c).startsWith("input.quantity.nounit [4000,"));
    }
}
