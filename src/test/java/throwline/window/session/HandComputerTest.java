package throwline.window.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.SetUp;
import throwline.report.data.SixFigures;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.Comparison.PackResult;
import throwline.study.ComparisonStudy;
import throwline.study.Headline;
import throwline.study.HeadlineNumbers;
import throwline.study.SetUpResult;

/** Numbers beside a hand are those of a comparison of the same model, and never older than ones that were shown. */
class HandComputerTest {

    private static final long PATIENCE = 60;

    private final BlockingQueue<HandComputer.Answer> answers = new LinkedBlockingQueue<>();

    private HandComputer<HandComputer.Answer> computer() {
        return new HandComputer<>(
                new MeasuredSections(),
                answer -> answer,
                answers::add,
                fault -> {
                    throw new AssertionError(fault);
                },
                Runnable::run);
    }

    private HandComputer.Answer finished() throws InterruptedException {
        while (true) {
            HandComputer.Answer answer = answers.poll(PATIENCE, TimeUnit.SECONDS);
            assertThat(answer).isNotNull();
            if (answer.isFinished()) {
                return answer;
            }
        }
    }

    /** The comparison is the independent way: it flies all set-ups afresh, as the command does. */
    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void numbers_equal_those_of_a_comparison_to_six_figures(String example) throws InterruptedException {
        PackedAirfoils airfoils = new PackedAirfoils();
        var project = (ReadModel.Project) ModelFile.read(Path.of("examples", example + ".yaml"), airfoils);
        var model = project.model();
        var all = new ComparisonStudy(new MeasuredSections(), Bands.load()).compare(model, airfoils, model.packs());
        long number = 0;
        try (HandComputer<HandComputer.Answer> computer = computer()) {
            for (PackResult pack : all.packs()) {
                for (SetUpResult expected : pack.setUps()) {
                    SetUp setUp = expected.setUp();
                    computer.ask(new HandQuestion(
                            ++number,
                            model,
                            airfoils,
                            pack.pack(),
                            setUp,
                            java.util.Optional.of(model.reference()),
                            0));
                    HandComputer.Answer answer = finished();
                    assertThat(shown(answer.now())).isEqualTo(shown(expected));
                    assertThat(answer.now().notes()).isEqualTo(expected.notes());
                    assertThat(answer.density()).isEqualTo(all.density());
                }
            }
        }
    }

    private static List<String> shown(SetUpResult result) {
        return result.headlines().all().stream().map(HandComputerTest::shown).toList();
    }

    private static String shown(HeadlineNumbers.Entry entry) {
        return entry.quantity() + entry.stick() + " "
                + (entry.number() instanceof Headline.Known known
                        ? SixFigures.of(known.value()) + " " + SixFigures.of(known.low()) + " "
                                + SixFigures.of(known.high())
                        : entry.number());
    }

    @Test
    void steady_flight_comes_first_and_says_what_is_being_worked_out() throws InterruptedException {
        Session session = new SessionFixture(Path.of(".")).example();
        try (HandComputer<HandComputer.Answer> computer = computer()) {
            computer.ask(HandQuestion.of(1, session));
            HandComputer.Answer first = answers.poll(PATIENCE, TimeUnit.SECONDS);
            assertThat(first).isNotNull();
            assertThat(first.isFinished()).isFalse();
            assertThat(first.now().stallSpeed()).isInstanceOf(Headline.Known.class);
            HandComputer.Answer last = finished();
            assertThat(last.question().number()).isEqualTo(1);
            assertThat(last.now().stallSpeed()).isEqualTo(first.now().stallSpeed());
            assertThat(last.now().notes()).containsAll(first.now().notes());
        }
    }

    @Test
    void the_newest_position_wins() throws InterruptedException {
        Session session = new SessionFixture(Path.of(".")).example();
        session.take("landing flap");
        try (HandComputer<HandComputer.Answer> computer = computer()) {
            for (int i = 1; i <= 300; i++) {
                session.drag("flaps", Math.toRadians(i % 60), false);
                computer.ask(HandQuestion.of(i, session));
            }
            HandComputer.Answer last = finished();
            assertThat(last.question().number()).isEqualTo(300);
            assertThat(last.now().setUp()).isEqualTo(session.setUp());
            assertThat(answers).isEmpty();
        }
    }

    @Test
    void views_never_go_back() throws InterruptedException {
        Session session = new SessionFixture(Path.of(".")).example();
        session.take("landing flap");
        List<Long> numbers = new java.util.concurrent.CopyOnWriteArrayList<>();
        try (HandComputer<Long> computer = new HandComputer<>(
                new MeasuredSections(),
                answer -> answer.question().number(),
                numbers::add,
                fault -> {},
                Runnable::run)) {
            for (int i = 1; i <= 60; i++) {
                session.drag("flaps", Math.toRadians(i), false);
                computer.ask(HandQuestion.of(i, session));
                Thread.sleep(7);
            }
            for (int i = 0; i < 600 && numbers.stream().filter(n -> n == 60).count() < 2; i++) {
                Thread.sleep(100);
            }
        }
        assertThat(numbers).isSorted().endsWith(60L, 60L);
        assertThat(numbers.stream().filter(n -> n < 60).distinct().count()).isPositive();
    }
}
