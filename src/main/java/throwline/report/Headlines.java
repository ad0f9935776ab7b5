package throwline.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.RollRate;

/** Questions that reports ask about headline numbers. */
public final class Headlines {

    private Headlines() {}

    /** The number, where there is one. */
    public static Optional<Headline.Known> known(Headline headline) {
        return headline instanceof Headline.Known known ? Optional.of(known) : Optional.empty();
    }

    /** All headline numbers of a set-up. */
    public static List<Headline> all(SetUpResult result) {
        Stream<Headline> numbers = Stream.of(
                result.stallSpeed(),
                result.approachSpeed(),
                result.descentAngle(),
                result.sinkRate(),
                result.bestGlideRatio(),
                result.noseDownSpeed(),
                result.elevator(),
                result.elevatorChange(),
                result.field().flareHeight(),
                result.field().floatDistance(),
                result.field().gustLimit(),
                result.field().landing());
        return Stream.concat(numbers, result.rollRates().stream().map(RollRate::rate))
                .toList();
    }

    /** True where a change may go either way: its band holds zero. */
    public static boolean eitherWay(Headline.Known change) {
        return change.low() <= 0 && change.high() >= 0;
    }

    /** True where two numbers cannot be told apart: the band of their difference holds zero. */
    public static boolean tooClose(Headline.Known a, Headline.Known b) {
        return a.tooCloseTo(b);
    }
}
