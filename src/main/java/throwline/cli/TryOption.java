package throwline.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import throwline.input.WrittenThrow;
import throwline.model.Elevator;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Surface;
import throwline.report.Sentences;
import throwline.section.AirfoilLibrary;
import throwline.study.Comparison;
import throwline.study.ComparisonStudy;
import throwline.units.Display;
import throwline.units.QuantityPrinter;

/** Throws to try in set-ups of a model, whatever its file says: {@code "landing flap: flaps 40 deg down"}. */
final class TryOption {

    private static final String TRY = "--try";
    private static final String ELEVATOR = "elevator";

    /** Throws that were rounded when they were written down are not beyond the travel. */
    private static final double ROUNDING = Math.toRadians(0.05);

    @Option(names = TRY, paramLabel = "SET-UP: SURFACE THROW", order = 2)
    private List<String> tries = new ArrayList<>();

    /** A model with what is tried, and the names of the set-ups that it changes. */
    record Tried(Model model, Set<String> names) {
        Tried {
            names = new LinkedHashSet<>(names);
        }
    }

    /** True where something is to be tried. */
    boolean isAsked() {
        return !tries.isEmpty();
    }

    /**
     * The model with what is tried.
     *
     * @throws WrongInput where it cannot be read or the model cannot do it
     */
    Tried of(Context context, Model model) {
        Map<String, SetUp> changed = new LinkedHashMap<>();
        for (String text : tries) {
            int colon = text.indexOf(':');
            if (colon < 0) {
                throw new WrongInput(context.words().say("cli.try.wrong", text));
            }
            SetUp named = new Chosen(context)
                    .among(TRY, text.substring(0, colon).strip(), model.name(), model.setUps(), SetUp::name);
            SetUp now = changed.getOrDefault(named.name(), named);
            for (String moved : text.substring(colon + 1).split(",", -1)) {
                now = moved(context, model, now, moved.strip(), text);
            }
            changed.put(named.name(), now);
        }
        List<SetUp> setUps = model.setUps().stream()
                .map(setUp -> changed.getOrDefault(setUp.name(), setUp))
                .toList();
        return new Tried(model.withSetUps(setUps), changed.keySet());
    }

    /** How the changed set-ups fly as the file has them. */
    Comparison before(Context context, Model model, ComparisonStudy study, AirfoilLibrary airfoils, List<Pack> packs) {
        Set<String> names = of(context, model).names();
        List<SetUp> flown = model.setUps().stream()
                .filter(setUp -> model.isReference(setUp) || names.contains(setUp.name()))
                .toList();
        return study.compare(model.withSetUps(flown), airfoils, packs);
    }

    private static SetUp moved(Context context, Model model, SetUp setUp, String moved, String text) {
        String surface = names(model)
                .filter(name -> startsWith(moved, name))
                .findFirst()
                .orElseThrow(() -> new WrongInput(context.words()
                        .say(
                                "cli.try.surface",
                                text,
                                String.join(", ", names(model).toList()))));
        String written = moved.substring(surface.length()).strip();
        WrittenThrow.Outcome outcome = WrittenThrow.read(written, model.throwChord(surface));
        if (outcome instanceof WrittenThrow.Wrong wrong) {
            throw new WrongInput(context.words()
                    .say("cli.quantity", TRY, new Sentences(context.words(), Display.metric()).say(wrong.note())));
        }
        double angle = ((WrittenThrow.Angle) outcome).angle();
        refuseBeyondTravel(context, model, surface, angle);
        if (surface.equals(ELEVATOR)) {
            return new SetUp(setUp.name(), setUp.deflections(), angle, setUp.switchPosition());
        }
        Map<String, Double> deflections = new LinkedHashMap<>(setUp.deflections());
        deflections.put(surface, angle);
        return new SetUp(setUp.name(), deflections, setUp.elevator(), setUp.switchPosition());
    }

    private static Stream<String> names(Model model) {
        return Stream.concat(model.wing().surfaces().stream().map(Surface::name), Stream.of(ELEVATOR));
    }

    private static boolean startsWith(String text, String name) {
        return text.regionMatches(true, 0, name, 0, name.length())
                && text.length() > name.length()
                && Character.isWhitespace(text.charAt(name.length()));
    }

    private static void refuseBeyondTravel(Context context, Model model, String surface, double angle) {
        Elevator elevator = model.tail().elevator();
        double up = model.wing().surface(surface).map(Surface::travelUp).orElse(elevator.travelUp());
        double down = model.wing().surface(surface).map(Surface::travelDown).orElse(elevator.travelDown());
        if (angle < -up - ROUNDING || angle > down + ROUNDING) {
            String allowed = context.words()
                    .say("cli.try.travel", QuantityPrinter.deflection(-up), QuantityPrinter.deflection(down));
            throw new WrongInput(context.words()
                    .say("cli.quantity.range", TRY, surface + " " + QuantityPrinter.deflection(angle), allowed));
        }
    }
}
