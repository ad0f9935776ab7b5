package throwline.study;

import java.util.Optional;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.sizing.SetUpWants;
import throwline.sizing.SurfaceGroups;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/** Questions that contradict themselves, or ask for a surface that the model does not have. */
public final class FindRefusal {

    private FindRefusal() {}

    /**
     * Fault of a question.
     *
     * @param model the model
     * @param question what is wanted
     * @return the first thing that is wrong; empty where it can be asked
     */
    public static Optional<Message> of(Model model, FindQuestion question) {
        SurfaceGroups groups = SurfaceGroups.of(model);
        boolean noSurface = groups.flaps().isEmpty() && groups.ailerons().isEmpty();
        if (noSurface && (question.setUp().isPresent() || question.levelTrim().isPresent())) {
            return Optional.of(Message.of("note.find.no-surface", model.name()));
        }
        boolean rolls = question.roll().isPresent() || question.rollHelp().isPresent();
        if (rolls && groups.ailerons().isEmpty()) {
            return Optional.of(Message.of("note.find.no-ailerons", model.name(), "{does: roll, ailerons: 12 deg}"));
        }
        if (!question.powered().isEmpty() && !model.isPowered(question.pack())) {
            return Optional.of(Message.of("note.find.no-motor", model.name(), "motor: {kv: 500}"));
        }
        if (question.powered().takeOffWithin().isPresent() && model.wheels().isEmpty()) {
            return Optional.of(Message.of("note.find.no-wheels", model.name()));
        }
        if (question.rollHelp().isPresent() && groups.flaps().isEmpty()) {
            return Optional.of(Message.of("note.find.no-flaps", model.name()));
        }
        if (question.tightestLoop().isPresent() && groups.flaps().isEmpty()) {
            return Optional.of(Message.of("note.find.no-flaps-loop", model.name()));
        }
        if (question.rollHelp().isPresent()
                && question.roll().isEmpty()
                && model.sticks().stream().noneMatch(Stick.Roll.class::isInstance)) {
            return Optional.of(Message.of("note.find.no-stick", model.name()));
        }
        return question.setUp()
                .flatMap(FindRefusal::contradiction)
                .or(() -> rollBelowStall(question))
                .or(() -> nothingToMix(model, question));
    }

    private static Optional<Message> contradiction(SetUpWants wants) {
        return wants.stallSpeed()
                .filter(v -> wants.descent().filter(d -> d.speed() <= v).isPresent())
                .map(v -> Message.of(
                        "note.find.below-own-stall",
                        speed(wants.descent().orElseThrow().speed()),
                        speed(v)));
    }

    private static Optional<Message> rollBelowStall(FindQuestion question) {
        return question.setUp()
                .flatMap(SetUpWants::stallSpeed)
                .filter(v -> question.roll().filter(r -> r.speed() <= v).isPresent())
                .map(v -> Message.of(
                        "note.find.roll-below-stall",
                        speed(question.roll().orElseThrow().speed()),
                        speed(v)));
    }

    private static Optional<Message> nothingToMix(Model model, FindQuestion question) {
        Optional<SetUp> named = question.levelTrim().flatMap(FindQuestion.LevelTrim::setUp);
        return named.filter(s -> s.deflections().equals(model.reference().deflections()))
                .map(s -> Message.of("note.find.nothing-to-mix", s.name()));
    }

    private static Quantity speed(double speed) {
        return new Quantity(speed, Dimension.SPEED);
    }
}
