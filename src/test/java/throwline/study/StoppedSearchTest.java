package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.input.PackedAirfoils;
import throwline.model.Model;
import throwline.section.CurveFamily;
import throwline.section.MeasuredSections;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.StoppableSections;
import throwline.section.SurfaceState;
import throwline.sizing.SetUpWants;
import throwline.validation.CaseFolder;
import throwline.validation.Validation;

/** A search that is stopped ends: no further section is worked out, on any thread. */
class StoppedSearchTest {

    private final AtomicBoolean stopped = new AtomicBoolean();
    private final AtomicInteger made = new AtomicInteger();
    private final AtomicInteger late = new AtomicInteger();

    /** Sections that are counted, and stopped once so many were asked for. */
    private SectionAerodynamics stoppedAfter(int asked) {
        SectionAerodynamics sections = new MeasuredSections();
        SectionAerodynamics counted = new SectionAerodynamics() {
            @Override
            public SectionCurve curve(SectionPlace place, SurfaceState surface, double reynolds) {
                count(asked);
                return sections.curve(place, surface, reynolds);
            }

            @Override
            public CurveFamily family(SectionPlace place, SurfaceState surface) {
                count(asked);
                return sections.family(place, surface);
            }
        };
        return new StoppableSections(counted, stopped::get);
    }

    private void count(int asked) {
        if (stopped.get()) {
            late.incrementAndGet();
        }
        if (made.incrementAndGet() >= asked) {
            stopped.set(true);
        }
    }

    private static FindQuestion question(Model model) {
        SetUpWants.WantedDescent descent = new SetUpWants.WantedDescent(Math.toRadians(15), 12);
        return new FindQuestion(
                model.packs().get(0),
                "found",
                Optional.of(new SetUpWants(Optional.empty(), Optional.of(descent), Optional.empty())),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 30, 200})
    void a_search_for_throws_ends(int asked) {
        Model model = Examples.read("orchard");
        FindStudy study = new FindStudy(stoppedAfter(asked), Bands.load());
        assertThatThrownBy(() -> study.find(model, Examples.AIRFOILS, question(model)))
                .isInstanceOf(CancellationException.class)
                .satisfies(thrown -> assertThat(made.get()).isBetween(asked, asked + 64));
        // A thread that was asked before it was stopped may still be under way; it asks for no second one.
        assertThat(late.get()).isLessThanOrEqualTo(Runtime.getRuntime().availableProcessors());
    }

    @Test
    void the_check_against_measured_cases_ends() {
        Validation validation = new Validation(stoppedAfter(100), new PackedAirfoils());
        assertThatThrownBy(() -> validation.run(CaseFolder.at(Path.of("validation"))))
                .isInstanceOf(CancellationException.class);
        assertThat(late.get()).isLessThanOrEqualTo(Runtime.getRuntime().availableProcessors());
    }

    /** Sections that could be stopped and are not are those that they stand for. */
    @Test
    void what_is_not_stopped_is_not_changed() {
        Model model = Examples.read("orchard");
        FindResult plain =
                new FindStudy(new MeasuredSections(), Bands.load()).find(model, Examples.AIRFOILS, question(model));
        FindResult stoppable = new FindStudy(stoppedAfter(Integer.MAX_VALUE), Bands.load())
                .find(model, Examples.AIRFOILS, question(model));
        assertThat(stoppable.setUp().orElseThrow().found().trial().setUp())
                .isEqualTo(plain.setUp().orElseThrow().found().trial().setUp());
    }
}
