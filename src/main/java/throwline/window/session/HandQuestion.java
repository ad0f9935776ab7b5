package throwline.window.session;

import java.util.List;
import java.util.Optional;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.section.AirfoilLibrary;

/**
 * Question of a hand.
 *
 * @param number questions count up; an answer is shown where no later one was
 * @param model the model
 * @param airfoils where its airfoils are found
 * @param pack what it carries
 * @param setUp where its surfaces stand
 * @param against what it is held against
 * @param throttle 0 (closed) to 1
 */
public record HandQuestion(
        long number,
        Model model,
        AirfoilLibrary airfoils,
        Pack pack,
        SetUp setUp,
        Optional<SetUp> against,
        double throttle) {

    private static final List<SetUp> NONE = List.of(new SetUp("", java.util.Map.of(), 0));

    /** The question of a session as it stands. */
    public static HandQuestion of(long number, Session session) {
        return new HandQuestion(
                number,
                session.model(),
                session.document().airfoils(),
                session.pack(),
                session.setUp(),
                session.against(),
                session.throttle());
    }

    /** All of it that does not depend on set-ups. */
    Airframed airframed() {
        return new Airframed(model.withSetUps(NONE), pack);
    }

    /** The set-ups of the model, the one at hand as it stands. */
    List<SetUp> setUps() {
        return model.setUps().stream()
                .map(each -> each.name().equals(setUp.name()) ? setUp : each)
                .toList();
    }

    /** What an answer about a set-up rests on. */
    Basis basis(SetUp about) {
        return new Basis(airframed(), about, model.withSetUps(setUps()).reference());
    }

    /**
     * A model without its set-ups, with a pack.
     *
     * @param model with one set-up that does not count
     * @param pack what it carries
     */
    record Airframed(Model model, Pack pack) {}

    /**
     * All that an answer depends on.
     *
     * @param airframed model and pack
     * @param setUp the set-up
     * @param reference the set-up that others are compared with
     */
    record Basis(Airframed airframed, SetUp setUp, SetUp reference) {}
}
