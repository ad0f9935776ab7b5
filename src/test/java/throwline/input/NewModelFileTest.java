package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.model.Model;
import throwline.model.Propeller;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.TailPosition;
import throwline.units.QuantityPrinter;
import throwline.words.Message;
import throwline.words.Words;

class NewModelFileTest {

    static final Map<String, String> METRIC = Map.ofEntries(
            Map.entry("name", "Plum # 2: the \"best\""),
            Map.entry("span", "1.8 m"),
            Map.entry("chord", "280 mm"),
            Map.entry("tip", "220 mm"),
            Map.entry("edge", "trailing"),
            Map.entry("shape", "flat"),
            Map.entry("thickness", "33 mm"),
            Map.entry("position", "1"),
            Map.entry("weight", "3.2 kg"),
            Map.entry("balance", "80 mm"),
            Map.entry("weight2", "2.9 kg"),
            Map.entry("balance2", "83 mm"),
            Map.entry("flaps.from", "70 mm"),
            Map.entry("flaps.to", "440 mm"),
            Map.entry("flaps.down", "45 deg"),
            Map.entry("ailerons.from2", "450 mm"),
            Map.entry("ailerons.to", "870 mm"),
            Map.entry("arm", "780 mm"),
            Map.entry("tail.span", "560 mm"),
            Map.entry("tail.chord", "160 mm"),
            Map.entry("rigging", "plan"),
            Map.entry("wing.incidence", "1.5 deg"),
            Map.entry("tail.incidence", "-0.5 deg"),
            Map.entry("takeoff", "none"),
            Map.entry("landing", "30 mm"),
            Map.entry("brake.flaps", "45 deg down"),
            Map.entry("roll.flaps", "8 deg"),
            Map.entry("pull.flaps", "10 deg"),
            Map.entry("propeller", "330 mm"),
            Map.entry("shut", "stop"),
            Map.entry("pitch", "180 mm"),
            Map.entry("kv", "620"),
            Map.entry("kind", "thin"),
            Map.entry("cells", "4"),
            Map.entry("capacity", "4000 mAh"),
            Map.entry("cells2", "3"),
            Map.entry("wheels", "80 mm"));

    private final Words words = Words.load();
    private final NewModelFile file = new NewModelFile(words, new FolderNames());

    @Test
    void answersBecomeAModel() {
        ReadModel read = TestFile.read(file.from(interview(METRIC)), "new.yaml");
        assertThat(read).isInstanceOf(ReadModel.Project.class);
        Model model = ((ReadModel.Project) read).model();
        assertThat(model.name()).isEqualTo("Plum # 2: the \"best\"");
        assertThat(model.wing().span()).isCloseTo(1.8, within(1e-9));
        assertThat(model.wing().sections().get(1).setBack()).isCloseTo(0.06, within(1e-9));
        assertThat(model.wing().sections().get(0).airfoil().text()).isEqualTo("clark-y");
        assertThat(model.packs()).extracting(p -> p.name() + " " + p.mass()).containsExactly("large 3.2", "small 2.9");
        assertThat(model.propeller().map(Propeller::shut)).contains(Propeller.Shut.STOPPED);
        assertThat(model.setUps()).extracting(SetUp::name).containsExactly("clean", "landing flap", "airbrake");
        assertThat(model.setUps().get(2).deflection("flaps")).isCloseTo(Math.toRadians(45), within(1e-9));
        // 30 mm straight across at the trailing edge, with a quarter of the chord at 70 mm from the middle.
        double chord = 0.25 * (0.280 - 0.060 * 0.070 / 0.900);
        assertThat(model.setUps().get(1).deflection("flaps")).isCloseTo(2 * Math.asin(0.030 / 2 / chord), within(1e-9));
        assertThat(model.wing().incidence()).isCloseTo(Math.toRadians(1.5), within(1e-9));
        assertThat(model.sticks())
                .extracting(Stick::name)
                .containsExactly("rates", "with flaps", "full up", "with camber");
    }

    @Test
    void theShortFileHoldsWhatWasAnsweredAndMarksTheRest() {
        String text = file.from(interview(METRIC));
        assertThat(text.lines().count()).isLessThanOrEqualTo(40);
        assertThat(text)
                .contains(
                        "airfoil: clark-y}   # assumed: airfoil\n",
                        "  airbrake: {flaps: 45 deg down, ailerons: 12 deg up}   # assumed: ailerons\n",
                        "wheels: {diameter: 80 mm}\n")
                .doesNotContain("take-off flap");
    }

    @Test
    void theFullFileSaysTheSameWithEveryKey() {
        Interview interview = interview(METRIC);
        String text = file.full(interview);
        assertThat(text)
                .contains("    flaps: 45 deg down\n", "    ailerons: 12 deg up   # assumed\n", "  diameter: 80 mm\n")
                .doesNotContain("diameter: 80 mm   # assumed");
        ReadModel full = TestFile.read(text, "new.yaml");
        ReadModel brief = TestFile.read(file.from(interview), "new.yaml");
        assertThat(((ReadModel.Project) full).model()).isEqualTo(((ReadModel.Project) brief).model());
    }

    /** Flaps that help to roll go up as well, where no linkage takes them as far as down. */
    @Test
    void flapsThatHelpToRollStayWithinWhatGoesUp() {
        Interview interview = new Interview();
        while (!interview.next().map(Question::id).orElseThrow().equals("roll.flaps")) {
            String id = interview.next().orElseThrow().id();
            String said = id.equals("flaps.down") ? "80 deg" : METRIC.getOrDefault(id, "");
            assertThat(interview.answer(said)).as(id).isEmpty();
        }
        assertThat(interview.answer("46 deg")).map(Message::code).contains("input.new.wrong.throw.down");
        assertThat(interview.answer("45 deg")).isEmpty();
    }

    /** Whatever a stick asks for is within what is assumed of the travel. */
    @Test
    void travelIsNeverAssumedTighterThanASetUpAndAStickAsk() {
        Map<String, String> answers = new HashMap<>(METRIC);
        answers.put("roll.up", "30 deg");
        answers.put("brake.ailerons", "14 deg");
        ReadModel read = TestFile.read(file.from(interview(answers)), "new.yaml");
        Model model = ((ReadModel.Project) read).model();
        assertThat(model.wing().surface("ailerons").orElseThrow().travelUp())
                .isGreaterThanOrEqualTo(Math.toRadians(44) - 1e-9);
    }

    @Test
    void backTakesBackOneAnswerAfterTheOther() {
        Interview interview = new Interview();
        assertThat(interview.answer("back")).map(Message::code).contains("input.new.first");
        interview.answer("Plum");
        interview.answer("1.8 m");
        assertThat(interview.answer("Back")).isEmpty();
        assertThat(interview.next()).map(Question::id).contains("span");
        assertThat(interview.answer("back")).isEmpty();
        assertThat(interview.next()).map(Question::id).contains("name");
        assertThat(interview.answers()).isEmpty();
    }

    @Test
    void answersOfAnEarlierTimeAreTakenAsFarAsTheyGo() {
        Interview whole = interview(METRIC);
        Interview resumed = new Interview();
        resumed.resume(whole.answers());
        assertThat(resumed.next()).isEmpty();
        assertThat(file.from(resumed)).isEqualTo(file.from(whole));
        Map<String, String> broken = whole.answers();
        broken.put("chord", "300 kg");
        Interview partly = new Interview();
        partly.resume(broken);
        assertThat(partly.next()).map(Question::id).contains("chord");
    }

    /** Words of the trade stand for the choices, in the questions and in the file. */
    @Test
    void aTailOnTopOfTheFinIsCalledATTail() {
        Map<String, String> answers = new HashMap<>(METRIC);
        answers.put("tail.position", "t-tail");
        String written = file.from(interview(answers));
        assertThat(written).contains("position: on top of the fin");
        ReadModel read = TestFile.read(written.replace("on top of the fin", "T-tail"), "new.yaml");
        assertThat(read).isInstanceOfSatisfying(ReadModel.Project.class, project -> {
            assertThat(project.model().tail().position()).isEqualTo(TailPosition.ON_TOP_OF_THE_FIN);
            assertThat(project.notes())
                    .contains(Message.of("note.read-as", "tail.position", "T-tail", "on top of the fin"));
        });
    }

    @Test
    void halfSymmetricalIsOneOfTheShapes() {
        Map<String, String> answers = new HashMap<>(METRIC);
        answers.put("shape", "semi symmetrical");
        assertThat(file.from(interview(answers))).contains("airfoil: e374");
        answers.put("shape", "symmetrical");
        assertThat(file.from(interview(answers))).contains("airfoil: j5012");
    }

    @Test
    void aPlainGliderNeedsFewAnswers() {
        Map<String, String> answers = Map.ofEntries(
                Map.entry("name", "Reed"),
                Map.entry("span", "78 in"),
                Map.entry("chord", "8 in"),
                Map.entry("shape", "thin"),
                Map.entry("thickness", "0.75 in"),
                Map.entry("position", "middle"),
                Map.entry("weight", "2 lb 10 oz"),
                Map.entry("balance", "2.5 in"),
                Map.entry("ailerons.from", "20 in"),
                Map.entry("ailerons.to", "38 in"),
                Map.entry("arm", "30 in"),
                Map.entry("tail.span", "18 in"),
                Map.entry("tail.chord", "4 in"),
                Map.entry("brake.ailerons", "14 deg up"));
        ReadModel read = TestFile.read(file.from(interview(answers)), "new.yaml");
        assertThat(read).isInstanceOf(ReadModel.Project.class);
        ReadModel.Project project = (ReadModel.Project) read;
        assertThat(project.model().setUps()).hasSize(2);
        assertThat(project.model().propeller()).isEmpty();
        assertThat(project.assumed()).anyMatch(a -> a.value().endsWith(" in"));
    }

    @Test
    void oddAnswersAreAskedForAgain() {
        Interview interview = new Interview();
        assertThat(interview.answer("")).map(Message::code).contains("input.new.needed");
        interview.answer("Plum");
        assertThat(interview.answer("1,8 m")).map(Message::code).contains("input.quantity.comma");
        assertThat(interview.answer("18 m")).map(Message::code).contains("input.new.wrong.span");
        assertThat(interview.answer("1.8 m")).isEmpty();
        assertThat(interview.answer("28 cm")).isEmpty();
        assertThat(interview.answer("")).isEmpty();
        assertThat(interview.next()).map(Question::id).contains("shape");
        assertThat(interview.answer("egg-shaped")).map(Message::code).contains("input.choice");
        assertThat(interview.answer("same")).isEmpty();
        assertThat(interview.answer("2 mm")).map(Message::code).contains("input.new.wrong.thickness");
    }

    /** A coordinate file is read as it is named: a bad one is told with its line, a good one stands in the file. */
    @Test
    void coordinatesInAFile(@TempDir Path folder) throws IOException {
        String outline = FourDigit.lines(new FourDigit(0.02, 0.4, 0.12).loop(), 1);
        Files.writeString(folder.resolve("own foil.dat"), outline);
        Files.writeString(folder.resolve("bad.dat"), outline.replaceFirst("\n", "\nand\n"));
        Interview interview = new Interview(new NamedAirfoils(new PackedAirfoils(), folder));
        List.of("Plum", "1.8 m", "28 cm", "").forEach(interview::answer);
        assertThat(interview.answer("I have its coordinates in a file")).isEmpty();
        assertThat(interview.next()).map(Question::id).contains("coordinates");
        assertThat(interview.answer("no-such.dat")).map(Message::code).contains("input.new.wrong.no-file");
        assertThat(interview.answer("bad.dat"))
                .hasValueSatisfying(wrong ->
                        assertThat(String.valueOf(wrong.arguments().get(0))).contains("bad.dat:2:"));
        assertThat(interview.answer("own foil.dat")).isEmpty();
        assertThat(interview.next()).map(Question::id).contains("position");
        assertThat(file.from(interview)).contains("airfoil: own foil.dat");
    }

    /** Whatever is answered within the limits of the questions, a file comes of it that can be read. */
    @Test
    void anyAnswersThatAreTakenMakeAFileThatCanBeRead() {
        Random random = new Random(20261125);
        for (int i = 0; i < 300; i++) {
            Interview interview = new Interview();
            for (Optional<Question> q = interview.next(); q.isPresent(); q = interview.next()) {
                Question question = q.get();
                int tries = 0;
                while (interview.next().equals(q)) {
                    String answer = any(question, random, tries++);
                    interview.answer(answer);
                }
            }
            String text = file.from(interview);
            ReadModel read = TestFile.read(text, "any.yaml");
            assertThat(read).as("%s%n%s", text, read).isInstanceOf(ReadModel.Project.class);
        }
    }

    private static String any(Question question, Random random, int tries) {
        if (!question.fallback().isEmpty() && random.nextInt(3) == 0) {
            return "";
        }
        if (!question.choices().isEmpty()) {
            return String.valueOf(1 + random.nextInt(question.choices().size()));
        }
        return switch (question.id()) {
            case "name" -> "Bird # " + random.nextInt(100) + ": \"new\"";
            case "weight", "weight2" -> random.nextInt(300, 9000) + " g";
            case "takeoff", "landing", "brake.flaps", "brake.ailerons", "roll.up", "roll.down", "pull" ->
                random.nextInt(4) == 0 ? "none" : random.nextInt(60) + (random.nextBoolean() ? " deg" : " mm up");
            case "ailerons.up", "ailerons.down", "elevator.travel", "roll.flaps", "pull.flaps" ->
                random.nextInt(1, 50) + (random.nextBoolean() ? " deg" : " mm");
            case "wing.incidence", "tail.incidence" -> random.nextInt(-9, 10) + " deg";
            case "flaps.chord", "ailerons.chord", "elevator.chord" -> random.nextInt(8, 50) + " %";
            case "coordinates" -> "clark-y";
            case "kv" -> String.valueOf(random.nextInt(30, 11000));
            case "cells", "cells2" -> String.valueOf(random.nextInt(16));
            case "capacity", "capacity2" -> random.nextInt(50, 50000) + " mAh";
            case "servo" -> random.nextInt(1, 30) + " kg cm";
            case "flaps.down" -> random.nextBoolean() ? random.nextInt(90) + " deg" : random.nextInt(60) + " mm down";
            default ->
                random.nextBoolean()
                        ? random.nextInt(1, 3000) + " mm"
                        : QuantityPrinter.number(random.nextDouble() * 100 / (1 + tries % 7), 2) + " in";
        };
    }

    @Test
    void everyQuestionHasItsWords() {
        Interview interview = new Interview();
        for (Optional<Question> question = interview.next(); question.isPresent(); question = interview.next()) {
            Question asked = question.get();
            assertThat(words.has(asked.sentence())).as(asked.id()).isTrue();
            assertThat(words.say(asked.sentence()).lines()).allMatch(line -> line.length() <= 80);
            assertThat(asked.fallback().isEmpty() || words.has(asked.fallback()))
                    .isTrue();
            assertThat(interview.answer(METRIC.getOrDefault(asked.id(), ""))).isEmpty();
        }
    }

    @Test
    void theEmptyFormAsksForWhatIsRequiredAndNothingElse() {
        ReadModel read = TestFile.read(file.empty(), "form.yaml");
        assertThat(read).isInstanceOf(ReadModel.Faulty.class);
        assertThat(((ReadModel.Faulty) read).problems())
                .extracting(p -> p.note().code())
                .containsOnly("input.novalue");
    }

    @Test
    void theFormHoldsEveryKeyOfTheTable() {
        StringBuilder filled = new StringBuilder();
        Map<String, String> examples =
                Map.of("name", "Plum", "weight", "3 kg", "position", "high", "airfoil", "clark-y");
        for (String line : file.empty().lines().toList()) {
            String used = line.replaceFirst("^(\\s*)#(?=\\S)", "$1");
            boolean blank = used.matches("\\s*(- )?(name|weight|balance|position|at|chord|airfoil|from|to|span|arm):");
            String key = used.strip().replaceFirst("^- ", "").replace(":", "");
            filled.append(used)
                    .append(blank ? " " + examples.getOrDefault(key, "100 mm") : "")
                    .append('\n');
        }
        ReadModel read = TestFile.read(filled.toString(), "form.yaml");
        List<String> codes = new ArrayList<>();
        if (read instanceof ReadModel.Faulty faulty) {
            faulty.problems().forEach(p -> codes.add(p.note().code()));
        }
        // Blanks filled with one length and sample throws do not make an aeroplane, but every key is known and kept.
        assertThat(codes).allMatch(code -> code.matches("input\\.(throw|surface|tail|balance|sections)\\..*"));
        for (KeyRow key : KeyTable.load().all()) {
            if (!key.name().equals(KeyRow.ANY_NAME) && !key.name().equals(KeyRow.ANY_ENTRY)) {
                assertThat(filled).containsPattern("(?m)^\\s*(- )?" + key.name() + ":");
            }
        }
    }

    static Interview interview(Map<String, String> answers) {
        Interview interview = new Interview();
        for (Optional<Question> question = interview.next(); question.isPresent(); question = interview.next()) {
            String id = question.get().id();
            assertThat(interview.answer(answers.getOrDefault(id, ""))).as(id).isEmpty();
        }
        return interview;
    }
}
