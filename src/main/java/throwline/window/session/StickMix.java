package throwline.window.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import throwline.input.ModelText;
import throwline.input.WrittenThrow;
import throwline.model.Servo;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.units.Dimension;
import throwline.units.QuantityPrinter;
import throwline.units.QuantityReader;
import throwline.units.ReadQuantity;
import throwline.units.Unit;
import throwline.words.Message;

/** Mix of one stick, what it moves and in which set-ups; every change is one step back. */
public final class StickMix {

    private static final String UP = "up";
    private static final String DOWN = "down";

    private final Session session;
    private final String name;

    /** That of the stick of this name. */
    public StickMix(Session session, String name) {
        this.session = session;
        this.name = name;
    }

    /** Ways a surface goes with a stick. */
    public enum Way {
        /** The side that rises in a roll. */
        UP(StickMix.UP),
        /** The side that falls in a roll. */
        DOWN(StickMix.DOWN),
        /** Both sides of a pull. */
        BOTH("");

        private final String key;

        Way(String key) {
            this.key = key;
        }
    }

    /** The stick; empty where the model has none of this name any more. */
    public Optional<Stick> stick() {
        return session.model().sticks().stream()
                .filter(each -> each.name().equals(name))
                .findFirst();
    }

    /** Surfaces that it may move: a roll leaves the elevator alone. */
    public List<Movable> movables() {
        boolean rolls = stick().filter(Stick.Roll.class::isInstance).isPresent();
        return session.movables().stream()
                .filter(each -> !rolls || !each.name().equals(Servo.ELEVATOR))
                .toList();
    }

    /** Where full stick puts a surface beyond the set-up, rad, trailing edge down positive; nothing where it leaves it alone. */
    public Optional<Double> added(Movable surface, Way way) {
        return stick().flatMap(each -> {
            if (each instanceof Stick.Roll roll) {
                Optional<Stick.Throws> both =
                        Optional.ofNullable(roll.throwsBySurface().get(surface.name()));
                return both.map(t -> way == Way.UP ? -t.up() : t.down());
            }
            Stick.Pull pull = (Stick.Pull) each;
            return surface.name().equals(Servo.ELEVATOR)
                    ? Optional.of(pull.elevator()).filter(angle -> angle != 0)
                    : Optional.ofNullable(pull.deflections().get(surface.name()));
        });
    }

    /** What the file has for it, as written; empty where nothing stands there. */
    public String written(Movable surface, Way way) {
        ModelText text = session.document().text();
        return text.at(path(surface.name(), way.key))
                .or(() -> text.at(path(surface.name(), "")).filter(whole -> !whole.startsWith("{")))
                .orElse("");
    }

    /**
     * Puts a throw: {@code 12 deg}, {@code 9 mm}, {@code 80 %} of the travel; for a pull with its way. An empty one takes the
     * surface out.
     */
    public Optional<String> put(Movable surface, Way way, String typed) {
        if (typed.isBlank()) {
            return session.apply(session.document().text().without(path(surface.name(), "")));
        }
        if (way == Way.BOTH) {
            double now = added(surface, way).orElse(surface.name().equals(Servo.ELEVATOR) ? -1.0 : 1.0);
            TypedThrow.Outcome read = TypedThrow.read(typed, surface, now);
            if (read instanceof TypedThrow.Wrong wrong) {
                return Optional.of(session.say(wrong.note()));
            }
            TypedThrow.Angle angle = (TypedThrow.Angle) read;
            return with(surface, angle.written().orElse(QuantityPrinter.deflection(angle.angle())));
        }
        return rolled(surface, way, typed);
    }

    private Optional<String> rolled(Movable surface, Way way, String typed) {
        String size = typed.strip().toLowerCase(Locale.ROOT).replaceFirst("\\s*(up|down)$", "");
        double travel = way == Way.UP ? surface.up() : surface.down();
        if (size.contains("%")) {
            if (!(QuantityReader.read(size, Dimension.FRACTION) instanceof ReadQuantity.Amount share)) {
                return Optional.of(session.say(Message.of("window.hand.share", typed.strip())));
            }
            size = degrees(share.quantity().value() * travel);
        } else if (WrittenThrow.read(size, surface.chord()) instanceof WrittenThrow.Wrong wrong) {
            return Optional.of(session.say(wrong.note()));
        }
        Way other = way == Way.UP ? Way.DOWN : Way.UP;
        String kept = written(surface, other);
        String beside = kept.isEmpty() ? degrees(0) : kept;
        return with(
                surface,
                way == Way.UP
                        ? "{up: " + size + ", down: " + beside + "}"
                        : "{up: " + beside + ", down: " + size + "}");
    }

    private static String degrees(double angle) {
        return QuantityPrinter.print(angle, Unit.DEGREE);
    }

    private Optional<String> with(Movable surface, String value) {
        return session.apply(session.document().text().with(path(surface.name(), ""), ModelText.value(value)));
    }

    /** Makes it work in a set-up or not; where it works in all of them the file need not say so. */
    public Optional<String> in(String setUp, boolean works) {
        List<String> all = session.model().setUps().stream().map(SetUp::name).toList();
        List<String> in = new ArrayList<>(
                stick().map(Stick::in).filter(names -> !names.isEmpty()).orElse(all));
        in.remove(setUp);
        if (works) {
            in.add(setUp);
        }
        if (in.isEmpty()) {
            return Optional.of(session.say(Message.of("window.stick.nowhere")));
        }
        ModelText text = session.document().text();
        List<String> path = path("in", "");
        if (in.containsAll(all)) {
            return text.at(path).isEmpty() ? Optional.empty() : session.apply(text.without(path));
        }
        String list =
                all.stream().filter(in::contains).map(ModelText::plain).collect(Collectors.joining(", ", "[", "]"));
        return session.apply(text.with(path, list));
    }

    /** True where it works in this set-up. */
    public boolean worksIn(SetUp setUp) {
        return stick().filter(each -> each.worksIn(setUp)).isPresent();
    }

    private List<String> path(String key, String inside) {
        List<String> path = new ArrayList<>(List.of("sticks", name, key));
        if (!inside.isEmpty()) {
            path.add(inside);
        }
        return path;
    }
}
