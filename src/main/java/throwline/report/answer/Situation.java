package throwline.report.answer;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import throwline.model.Model;
import throwline.report.Headlines;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.words.Message;

/**
 * What verdicts are chosen from: all set-ups with one pack, and the questions that the conditions ask of them.
 *
 * @param model the aeroplane
 * @param setUps results with one pack
 * @param warnings what holds for the whole answer
 */
record Situation(Model model, List<SetUpResult> setUps, List<Message> warnings) {

    Situation {
        setUps = List.copyOf(setUps);
        warnings = List.copyOf(warnings);
    }

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

        double value() {
            return number.value();
        }

        /** True where the two numbers can be told apart. */
        boolean apartFrom(Has other) {
            return !Headlines.tooClose(number, other.number);
        }

        boolean moreThan(Has other) {
            return apartFrom(other) && number.value() > other.number.value();
        }
    }

    /** The set-up that others are compared with. */
    Optional<SetUpResult> reference() {
        return setUps.stream()
                .filter(setUp -> setUp.setUp().equals(model.reference()))
                .findFirst();
    }

    /** The others. */
    List<SetUpResult> moved() {
        return setUps.stream()
                .filter(setUp -> !setUp.setUp().equals(model.reference()))
                .toList();
    }

    /** Set-ups of which this number is known. */
    List<Has> with(List<SetUpResult> among, Function<SetUpResult, Headline> number) {
        return among.stream().flatMap(setUp -> has(setUp, number).stream()).toList();
    }

    Optional<Has> has(SetUpResult setUp, Function<SetUpResult, Headline> number) {
        return Headlines.known(number.apply(setUp)).map(known -> new Has(setUp, known));
    }

    /** The set-up that comes in slowest. */
    Optional<Has> slowest() {
        return with(setUps, SetUpResult::approachSpeed).stream().min(Comparator.comparingDouble(Has::value));
    }

    /** Names of set-ups with a note of this code. */
    List<String> noted(String code) {
        return setUps.stream()
                .filter(setUp -> setUp.isNoted(code))
                .map(setUp -> setUp.setUp().name())
                .toList();
    }
}
