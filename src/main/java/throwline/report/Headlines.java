package throwline.report;

import java.util.Optional;
import throwline.study.Headline;

/** Questions that reports ask about headline numbers. */
public final class Headlines {

    private Headlines() {}

    /** The number, where there is one. */
    public static Optional<Headline.Known> known(Headline headline) {
        return headline instanceof Headline.Known known ? Optional.of(known) : Optional.empty();
    }

    /** True where a change may go either way: its band holds zero. */
    public static boolean eitherWay(Headline.Known change) {
        return change.mayGoEitherWay();
    }

    /** True where two numbers cannot be told apart: the band of their difference holds zero. */
    public static boolean tooClose(Headline.Known a, Headline.Known b) {
        return a.tooCloseTo(b);
    }
}
