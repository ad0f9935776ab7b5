package throwline.window.session;

import java.util.Locale;
import java.util.Optional;
import throwline.input.GivenName;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.sizing.PoweredWants;
import throwline.sizing.PoweredWants.As;
import throwline.sizing.PoweredWants.WantedClimb;
import throwline.sizing.SetUpWants;
import throwline.sizing.SetUpWants.WantedDescent;
import throwline.sizing.SetUpWants.WantedRoll;
import throwline.study.FindQuestion;
import throwline.study.FindRefusal;
import throwline.units.Dimension;
import throwline.units.QuantityReader;
import throwline.units.ReadQuantity;
import throwline.words.Message;

/**
 * Wants of a pilot as typed; what is empty is not wanted.
 *
 * @param stall stall speed
 * @param down angle of the way down
 * @param downAt speed on it
 * @param roll roll rate
 * @param rollAt speed in it
 * @param trim set-up that is to need no other elevator
 * @param help flaps that help the ailerons
 * @param loop flaps that help the elevator
 * @param takeOff longest take-off run
 * @param climb angle or rate of a climb
 * @param name of what is found
 */
public record TypedWants(
        String stall,
        String down,
        String downAt,
        String roll,
        String rollAt,
        String trim,
        boolean help,
        boolean loop,
        String takeOff,
        String climb,
        String name) {

    /** What came of reading them. */
    public sealed interface Outcome permits Asked, Wrong {}

    /** A question. */
    public record Asked(FindQuestion question) implements Outcome {}

    /** What is wrong with them. */
    public record Wrong(Message note) implements Outcome {}

    /** A typed value that cannot be read. */
    private static final class Unread extends Exception {
        private static final long serialVersionUID = 1;
        private final transient Message note;

        Unread(Message note) {
            this.note = note;
        }
    }

    /** Reads them for a model with a pack. */
    public Outcome read(Model model, Pack pack) {
        try {
            FindQuestion question = question(model, pack);
            if (question.isEmpty()) {
                return new Wrong(Message.of("window.wants.nothing"));
            }
            boolean taken = model.setUps().stream().anyMatch(s -> s.name().equalsIgnoreCase(name.strip()))
                    || model.sticks().stream().anyMatch(s -> s.name().equalsIgnoreCase(name.strip()));
            if (taken || name.isBlank()) {
                return new Wrong(Message.of("cli.find.name.taken", name.strip()));
            }
            return GivenName.wrong(name, "steep")
                    .or(() -> FindRefusal.of(model, question))
                    .<Outcome>map(Wrong::new)
                    .orElse(new Asked(question));
        } catch (Unread e) {
            return new Wrong(e.note);
        }
    }

    private FindQuestion question(Model model, Pack pack) throws Unread {
        Optional<Double> stallSpeed = amount(stall, Dimension.SPEED);
        Optional<Double> angle = amount(down, Dimension.ANGLE);
        Optional<WantedDescent> descent =
                angle.isEmpty() ? Optional.empty() : Optional.of(new WantedDescent(angle.get(), needed(downAt)));
        Optional<Double> rate = amount(roll, Dimension.ANGULAR_RATE);
        Optional<WantedRoll> rolling =
                rate.isEmpty() ? Optional.empty() : Optional.of(new WantedRoll(rate.get(), needed(rollAt)));
        Optional<SetUp> mixed =
                model.setUps().stream().filter(s -> s.name().equals(trim)).findFirst();
        return new FindQuestion(
                pack,
                name.strip(),
                stallSpeed.isPresent() || descent.isPresent()
                        ? Optional.of(new SetUpWants(stallSpeed, descent, rolling))
                        : Optional.empty(),
                rolling,
                mixed.map(s -> new FindQuestion.LevelTrim(Optional.of(s), Optional.empty(), Optional.empty())),
                help ? Optional.of(new FindQuestion.RollHelpWanted(amount(rollAt, Dimension.SPEED))) : Optional.empty(),
                loop ? Optional.of(new FindQuestion.LoopWanted(Optional.empty())) : Optional.empty(),
                new PoweredWants(amount(takeOff, Dimension.LENGTH), climbing()));
    }

    /** A climb as an angle, where it can be read as one; else as a rate. */
    private Optional<WantedClimb> climbing() throws Unread {
        return QuantityReader.read(climb.strip().toLowerCase(Locale.ROOT), Dimension.ANGLE)
                        instanceof ReadQuantity.Amount
                ? amount(climb, Dimension.ANGLE).map(angle -> new WantedClimb(angle, As.ANGLE))
                : amount(climb, Dimension.SPEED).map(rate -> new WantedClimb(rate, As.RATE));
    }

    private static double needed(String typed) throws Unread {
        return amount(typed, Dimension.SPEED).orElseThrow(() -> new Unread(Message.of("window.wants.speed")));
    }

    /** A positive amount; with its unit. */
    private static Optional<Double> amount(String typed, Dimension dimension) throws Unread {
        String plain = typed.strip().toLowerCase(Locale.ROOT);
        if (plain.isEmpty()) {
            return Optional.empty();
        }
        ReadQuantity reading = QuantityReader.read(plain, dimension);
        if (reading instanceof ReadQuantity.Refused refused) {
            throw new Unread(Message.of(refused.code(), refused.arguments().toArray()));
        }
        double value = ((ReadQuantity.Amount) reading).quantity().value();
        if (value <= 0) {
            throw new Unread(Message.of("window.wants.positive", typed.strip()));
        }
        return Optional.of(value);
    }
}
