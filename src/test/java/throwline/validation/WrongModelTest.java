package throwline.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import throwline.input.PackedAirfoils;
import throwline.section.ForwardingCurve;
import throwline.section.MeasuredSections;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;

/** Sections whose lift is a fifth too large must not get through. */
class WrongModelTest {

    private static final double TOO_MUCH = 1.2;

    @Test
    void tooMuchLiftMakesCasesFail() throws UnreadableCase {
        SectionAerodynamics right = new MeasuredSections();
        SectionAerodynamics wrong = (place, surface, reynolds) -> new Steeper(right.curve(place, surface, reynolds));
        Set<String> missed = missed(wrong);
        missed.removeAll(missed(right));
        assertThat(missed)
                .anyMatch(check -> check.startsWith("tunnel-model: lift,"))
                .anyMatch(check -> check.startsWith("reynolds-left-out: median error"))
                .anyMatch(check -> check.startsWith("surface-up-by-method: maximum lift"))
                .anyMatch(check -> check.startsWith("single-values: lift"))
                .anyMatch(check -> check.startsWith("measured-wings: largest lift"))
                .hasSizeGreaterThan(20);
    }

    private static Set<String> missed(SectionAerodynamics sections) throws UnreadableCase {
        Book book = new Validation(sections, new PackedAirfoils()).run(CaseFolder.at(Path.of("validation")));
        return book.cases().stream()
                .flatMap(c -> c.checks().stream()
                        .filter(check -> !check.passed())
                        .map(check -> c.name() + ": " + check.quantity() + ", " + check.condition()))
                .collect(Collectors.toSet());
    }

    /** A curve with more lift at every angle. */
    private static final class Steeper extends ForwardingCurve {

        Steeper(SectionCurve curve) {
            super(curve);
        }

        @Override
        public double lift(double alpha) {
            return TOO_MUCH * curve.lift(alpha);
        }

        @Override
        public double risingLift(double alpha) {
            return TOO_MUCH * curve.risingLift(alpha);
        }

        @Override
        public double risingLiftSlope(double alpha) {
            return TOO_MUCH * curve.risingLiftSlope(alpha);
        }

        @Override
        public double maxLift() {
            return TOO_MUCH * curve.maxLift();
        }

        @Override
        public double minLift() {
            return TOO_MUCH * curve.minLift();
        }

        @Override
        public double attachedSlope() {
            return TOO_MUCH * curve.attachedSlope();
        }
    }
}
