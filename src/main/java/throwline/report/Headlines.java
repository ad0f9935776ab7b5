package throwline.report;

import java.util.Optional;
import throwline.study.Headline;

/** The number of a headline, where it has one. */
public final class Headlines {

    private Headlines() {}

    /** The number, where there is one. */
    public static Optional<Headline.Known> known(Headline headline) {
        return headline instanceof Headline.Known known ? Optional.of(known) : Optional.empty();
    }
}
