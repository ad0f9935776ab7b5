package throwline.input;

import java.util.Optional;
import java.util.OptionalDouble;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/** Relations of an answer to those before it, which no single answer can show. */
final class AnswerRelations {

    /** A surface of less width, m, is a slip of the keyboard. */
    private static final double NARROWEST = 0.01;

    private final Interview interview;

    AnswerRelations(Interview interview) {
        this.interview = interview;
    }

    /** What is wrong with this answer; empty where nothing is. */
    Optional<Message> wrong(String id, String said) {
        double chord = interview.metres("chord");
        double tip = interview.metres("span") / 2;
        return switch (id) {
            case "span" -> Answers.between(said, "span", 0.3, 8);
            case "thickness" -> Answers.between(said, "thickness", 0.03 * chord, 0.25 * chord);
            case "chord" -> Answers.between(said, "chord", 0.02, tip);
            case "tip" -> Answers.between(said, "tip", 0.1 * chord, 1.2 * chord);
            case "edge" -> Answers.sweep(said, interview.tipSetBack(said), interview.metres("tip") - chord, tip);
            case "balance", "balance2" -> Answers.between(said, "balance", -chord, chord);
            case "pitch" -> Answers.between(said, "pitch", 0.02, DriveCheck.MOST_PITCH * interview.metres("propeller"));
            case "arm" -> Answers.between(said, "arm", 1.05 * chord, 4);
            case "flaps.from", "ailerons.from", "flaps.to", "ailerons.from2", "ailerons.to" ->
                surfaceEnd(id, said, tip);
            default -> deflection(id, said);
        };
    }

    private Optional<Message> surfaceEnd(String id, String said, double tip) {
        double ailerons = Answers.amount(interview.aileronsFrom(), Dimension.LENGTH);
        return switch (id) {
            case "flaps.to" -> Answers.between(said, "surface", interview.metres("flaps.from") + NARROWEST, tip);
            case "ailerons.from2" ->
                Answers.between(said, "surface", interview.metres("flaps.to"), tip - 2 * NARROWEST);
            case "ailerons.to" -> Answers.between(said, "surface", ailerons + NARROWEST, tip);
            default -> Answers.between(said, "surface", 0, tip - 2 * NARROWEST);
        };
    }

    private Optional<Message> deflection(String id, String said) {
        return switch (id) {
            case "flaps.down" -> within(said, "flaps", WrittenDeflection.Sense.DOWN, Movable.MOST_DOWN);
            case "ailerons.up" -> within(said, "ailerons", WrittenDeflection.Sense.UP, Movable.MOST_UP);
            case "ailerons.down" -> within(said, "ailerons", WrittenDeflection.Sense.DOWN, Movable.MOST_UP);
            case "elevator.travel" -> within(said, "elevator", WrittenDeflection.Sense.UNSAID, Movable.MOST_UP);
            case "takeoff", "landing", "brake.flaps", "pull.flaps" ->
                within(said, "flaps", WrittenDeflection.Sense.DOWN, travel("flaps", "flaps.down", Movable.MOST_DOWN));
            case "roll.flaps" -> within(said, "flaps", WrittenDeflection.Sense.DOWN, eachWay());
            case "brake.ailerons", "roll.up" ->
                within(
                        said,
                        "ailerons",
                        WrittenDeflection.Sense.UP,
                        travel("ailerons", "ailerons.up", Movable.MOST_UP));
            case "roll.down" ->
                within(
                        said,
                        "ailerons",
                        WrittenDeflection.Sense.DOWN,
                        travel("ailerons", "ailerons.down", Movable.MOST_UP));
            case "cruise" -> cruise(said);
            case "pull" ->
                within(
                        said,
                        "elevator",
                        WrittenDeflection.Sense.UP,
                        travel("elevator", "elevator.travel", Movable.MOST_UP));
            default -> Optional.empty();
        };
    }

    /** A trim within the elevator's travel, with its way. */
    private Optional<Message> cruise(String said) {
        Optional<WrittenDeflection> trim = Answers.deflection(said).filter(d -> d.size() > 0);
        if (trim.isPresent() && trim.get().sense() == WrittenDeflection.Sense.UNSAID) {
            return Optional.of(Message.of("input.cruise-trim.way"));
        }
        return trim.flatMap(
                d -> within(said, "elevator", d.sense(), travel("elevator", "elevator.travel", Movable.MOST_UP)));
    }

    /** The furthest that a surface goes, rad, as answered; else what any linkage lets it. */
    private double travel(String surface, String id, double most) {
        return Answers.deflection(interview.text(id))
                .map(d -> d.angle(interview.chordOf(surface)))
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .orElse(most);
    }

    /** The furthest that flaps go both up and down, rad. */
    private double eachWay() {
        return Math.min(Movable.MOST_UP, travel("flaps", "flaps.down", Movable.MOST_DOWN));
    }

    /** What is wrong with a throw of more than nothing one way, no further than this, rad. */
    private Optional<Message> within(String said, String surface, WrittenDeflection.Sense way, double most) {
        Optional<WrittenDeflection> deflection = Answers.deflection(said);
        boolean right = deflection
                .filter(d -> d.size() > 0)
                .filter(d -> d.sense() == WrittenDeflection.Sense.UNSAID || d.sense() == way)
                .isPresent();
        OptionalDouble angle =
                deflection.map(d -> d.angle(interview.chordOf(surface))).orElse(OptionalDouble.empty());
        if (right && angle.isPresent() && angle.getAsDouble() <= most) {
            return Optional.empty();
        }
        String code = way == WrittenDeflection.Sense.UP ? "up" : way == WrittenDeflection.Sense.DOWN ? "down" : "both";
        return Optional.of(Message.of("input.new.wrong.throw." + code, said, new Quantity(most, Dimension.ANGLE)));
    }
}
