package throwline.report.html;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import throwline.model.Model;
import throwline.report.Headlines;
import throwline.study.Comparison;
import throwline.study.Comparison.PackResult;
import throwline.study.Headline;
import throwline.study.SetUpResult;

/**
 * What verdicts are chosen from: all set-ups with one pack, and the questions that the conditions ask of them.
 *
 * @param comparison the whole result
 * @param result set-ups with one pack
 */
record Situation(Comparison comparison, PackResult result) {

    /**
     * A set-up and one of its numbers.
     *
     * @param setUp the set-up
     * @param number the number
     */
    record Has(SetUpResult setUp, Headline.Known number) {
        String name() {
            return setUp.setUp().name();
        }

        /** True where the two numbers can be told apart. */
        boolean apartFrom(Has other) {
            return !Headlines.tooClose(number, other.number);
        }

        boolean moreThan(Has other) {
            return apartFrom(other) && number.value() > other.number.value();
        }
    }

    Model model() {
        return comparison.model();
    }

    List<SetUpResult> setUps() {
        return result.setUps();
    }

    /** The set-up that others are compared with. */
    Optional<SetUpResult> reference() {
        return setUps().stream()
                .filter(setUp -> setUp.setUp().equals(model().reference()))
                .findFirst();
    }

    /** The others. */
    List<SetUpResult> moved() {
        return setUps().stream()
                .filter(setUp -> !setUp.setUp().equals(model().reference()))
                .toList();
    }

    /** Set-ups of which this number is known. */
    List<Has> with(List<SetUpResult> setUps, Function<SetUpResult, Headline> number) {
        return setUps.stream().flatMap(setUp -> has(setUp, number).stream()).toList();
    }

    Optional<Has> has(SetUpResult setUp, Function<SetUpResult, Headline> number) {
        return Headlines.known(number.apply(setUp)).map(known -> new Has(setUp, known));
    }

    /** The set-up that comes in slowest. */
    Optional<Has> slowest() {
        return with(setUps(), SetUpResult::approachSpeed).stream()
                .min(Comparator.comparingDouble(has -> has.number().value()));
    }

    /** Names of set-ups with a note of this code. */
    List<String> noted(String code) {
        return setUps().stream()
                .filter(setUp -> setUp.isNoted(code))
                .map(setUp -> setUp.setUp().name())
                .toList();
    }
}
