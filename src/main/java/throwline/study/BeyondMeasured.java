package throwline.study;

import java.util.Collection;
import java.util.List;
import throwline.model.SetUp;
import throwline.words.Message;

/** Flaps further down than any section of a model's size was measured with. */
public final class BeyondMeasured {

    /** Methods manual 4.5: no polar of a section with a plain flap 10 to 60 degrees down is to be had below Re 1 000 000. */
    private static final double FURTHEST = Math.toRadians(10);

    private BeyondMeasured() {}

    /** What to tell of set-ups, where a surface of one of them stands that far down. */
    public static List<Message> notes(Collection<SetUp> setUps) {
        return notes(setUps.stream()
                .flatMap(setUp -> setUp.deflections().values().stream())
                .mapToDouble(d -> d)
                .max()
                .orElse(0));
    }

    /** What to tell of flaps that go this far down, rad. */
    static List<Message> notes(double furthest) {
        return furthest >= FURTHEST ? List.of(Message.of("note.no-flap-measured")) : List.of();
    }
}
