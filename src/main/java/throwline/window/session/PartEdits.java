package throwline.window.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import throwline.input.GivenName;
import throwline.input.ModelText;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.units.QuantityPrinter;
import throwline.units.Unit;
import throwline.words.Message;

/** Packs and surfaces of a model, which come and go with all that names them; every change is one step back. */
public final class PartEdits {

    /** Least span of a new surface and its distance from the next one and from the tip, m. */
    private static final double LEAST = 0.08;

    private static final double GAP = 0.01;

    private final Session session;

    /** Those of a session. */
    public PartEdits(Session session) {
        this.session = session;
    }

    /** Kinds of parts. */
    public enum Kind {
        /** A battery it flies with. */
        PACK,
        /** A hinged surface of the wing. */
        SURFACE;

        private List<String> path() {
            return this == PACK ? List.of("packs") : List.of("wing", "surfaces");
        }

        private List<String> path(String name) {
            List<String> whole = new ArrayList<>(path());
            whole.add(name);
            return whole;
        }
    }

    /** The part that a value of the file belongs to. */
    public static Optional<Kind> kindOf(List<String> path) {
        for (Kind kind : Kind.values()) {
            int size = kind.path().size();
            if (path.size() > size && path.subList(0, size).equals(kind.path())) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    /** Name of the part that a value of the file belongs to. */
    public static String nameIn(Kind kind, List<String> path) {
        return path.get(kind.path().size());
    }

    /** Adds a pack like the one at hand, or a surface where the wing has room for one. */
    public Optional<String> add(Kind kind, String name) {
        Optional<String> refused = refused(kind, name);
        if (refused.isPresent()) {
            return refused;
        }
        if (kind == Kind.PACK) {
            Pack like = session.pack();
            ModelText text = session.document().text();
            return session.apply(text.copied(Kind.PACK.path(like.name()), name)
                    .or(() -> text.with(Kind.PACK.path(name), entry(like))));
        }
        Optional<String> room = room();
        return room.isEmpty()
                ? Optional.of(session.say(Message.of("window.part.room")))
                : session.apply(session.document().text().with(Kind.SURFACE.path(name), room.get()));
    }

    private static String entry(Pack pack) {
        return "{weight: " + QuantityPrinter.print(pack.mass(), Unit.KILOGRAM) + ", balance: "
                + millimetres(pack.balance()) + "}";
    }

    /** The widest free stretch of one half of the wing. */
    private Optional<String> room() {
        Model model = session.model();
        List<Surface> inOrder = model.wing().surfaces().stream()
                .sorted(Comparator.comparingDouble(Surface::from))
                .toList();
        double from = 0;
        double best = 0;
        double start = 0;
        for (Surface each : inOrder) {
            if (each.from() - from > best) {
                best = each.from() - from;
                start = from;
            }
            from = Math.max(from, each.to());
        }
        if (model.wing().semiSpan() - from > best) {
            best = model.wing().semiSpan() - from;
            start = from;
        }
        return best < LEAST + 2 * GAP
                ? Optional.empty()
                : Optional.of("{from: " + millimetres(start + GAP) + ", to: " + millimetres(start + best - GAP) + "}");
    }

    private static String millimetres(double length) {
        return QuantityPrinter.print(Math.rint(length * 1000) / 1000, Unit.MILLIMETRE);
    }

    /** Gives a part another name, wherever it is named. */
    public Optional<String> rename(Kind kind, String old, String name) {
        Optional<String> refused = refused(kind, name);
        if (refused.isPresent()) {
            return refused;
        }
        Optional<ModelText> text = session.document().text().renamed(kind.path(old), name);
        for (List<String> use : uses(kind, old)) {
            text = text.flatMap(t -> t.renamed(use, name));
        }
        boolean carried = kind == Kind.PACK && session.pack().name().equals(old);
        Optional<String> wrong = session.apply(text);
        if (wrong.isEmpty() && carried) {
            session.carry(name);
        }
        return wrong;
    }

    /** Removes a part, wherever it is named; a stick that moved nothing else goes too. */
    public Optional<String> remove(Kind kind, String name) {
        Optional<ModelText> text = Optional.of(session.document().text());
        for (List<String> use : uses(kind, name)) {
            text = text.flatMap(t -> t.without(movesNothingElse(use) ? use.subList(0, 2) : use));
        }
        return session.apply(text.flatMap(t -> t.without(kind.path(name))));
    }

    private boolean movesNothingElse(List<String> use) {
        return use.get(0).equals("sticks")
                && session.model().sticks().stream()
                        .filter(stick -> stick.name().equals(use.get(1)))
                        .anyMatch(stick -> stick instanceof Stick.Roll roll
                                ? roll.throwsBySurface().size() < 2
                                : ((Stick.Pull) stick).elevator() == 0
                                        && ((Stick.Pull) stick).deflections().size() < 2);
    }

    /** Where else the file names a surface. */
    private List<List<String>> uses(Kind kind, String name) {
        ModelText text = session.document().text();
        List<List<String>> uses = new ArrayList<>();
        if (kind == Kind.SURFACE) {
            for (String group : List.of("set-ups", "sticks")) {
                text.names(List.of(group)).forEach(each -> uses.add(List.of(group, each, name)));
            }
            uses.add(List.of("servos", name));
        }
        return uses.stream().filter(use -> text.at(use).isPresent()).toList();
    }

    private Optional<String> refused(Kind kind, String name) {
        String plain = name.strip();
        boolean taken =
                session.document().text().names(kind.path()).stream().anyMatch(each -> each.equalsIgnoreCase(plain));
        return taken
                ? Optional.of(session.say(Message.of("window.part.taken", plain)))
                : GivenName.wrong(plain, kind == Kind.PACK ? "large" : "flaps").map(session::say);
    }
}
