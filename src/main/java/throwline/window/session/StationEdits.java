package throwline.window.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import throwline.input.ListEntries;
import throwline.input.ModelText;
import throwline.model.WingSection;
import throwline.units.QuantityPrinter;
import throwline.units.Unit;
import throwline.words.Message;

/** Stations of the wing that come and go; every change is one step back. */
public final class StationEdits {

    private static final List<String> SECTIONS = List.of("wing", "sections");

    /** Least distance of two stations, m. */
    private static final double LEAST = 0.02;

    private final Session session;

    /** Those of a session. */
    public StationEdits(Session session) {
        this.session = session;
    }

    /** The station that a value of the file belongs to, from 1; empty where it belongs to none. */
    public static OptionalInt stationOf(List<String> path) {
        return path.size() > 2
                        && path.subList(0, 2).equals(SECTIONS)
                        && path.get(2).matches("\\[\\d{1,4}\\]")
                ? OptionalInt.of(
                        Integer.parseInt(path.get(2).substring(1, path.get(2).length() - 1)))
                : OptionalInt.empty();
    }

    /**
     * Adds a station halfway to the next one further out; it changes nothing until its values are changed.
     *
     * @param station number of the one further in, from 1; empty for the widest part of the wing, the last for the one before
     */
    public Optional<String> add(OptionalInt station) {
        List<WingSection> sections = session.model().wing().sections();
        int inner = Math.max(1, Math.min(sections.size() - 1, station.orElseGet(() -> widest(sections))));
        WingSection from = sections.get(inner - 1);
        WingSection to = sections.get(inner);
        if (to.at() - from.at() < 2 * LEAST) {
            return Optional.of(session.say(Message.of("window.station.room")));
        }
        return session.apply(entries().with(inner, halfway(from, to)));
    }

    private static int widest(List<WingSection> sections) {
        return IntStream.range(1, sections.size())
                .boxed()
                .max(Comparator.comparingDouble(
                        i -> sections.get(i).at() - sections.get(i - 1).at()))
                .orElse(1);
    }

    private ListEntries entries() {
        return new ListEntries(session.document().text(), SECTIONS);
    }

    private String halfway(WingSection from, WingSection to) {
        Unit unit = session.document().good().display().length();
        List<String> values = new ArrayList<>();
        values.add("at: " + QuantityPrinter.print((from.at() + to.at()) / 2, unit));
        values.add("chord: " + QuantityPrinter.print((from.chord() + to.chord()) / 2, unit));
        double washout = (from.washout() + to.washout()) / 2;
        if (washout != 0) {
            values.add("washout: " + QuantityPrinter.print(washout, Unit.DEGREE));
        }
        values.add("set back: " + QuantityPrinter.print((from.setBack() + to.setBack()) / 2, unit));
        return "{" + String.join(", ", values) + "}";
    }

    /**
     * Removes a station; the wing is then straight between its neighbours.
     *
     * @param station its number, from 1
     */
    public Optional<String> remove(int station) {
        List<WingSection> sections = session.model().wing().sections();
        if (sections.size() <= 2) {
            return Optional.of(session.say(Message.of("window.station.two")));
        }
        if (station == 1) {
            return Optional.of(session.say(Message.of("window.station.middle")));
        }
        Optional<ModelText> text = Optional.of(session.document().text());
        List<String> airfoil = List.of("wing", "sections", "[" + (station + 1) + "]", "airfoil");
        if (station < sections.size()
                && session.document().text().at(airfoil).isEmpty()
                && !sections.get(station)
                        .airfoil()
                        .equals(sections.get(station - 2).airfoil())) {
            // The next one has the airfoil of this one, and keeps it.
            String name = sections.get(station).airfoil().text();
            text = text.flatMap(t -> t.with(airfoil, ModelText.value(name)));
        }
        return session.apply(text.flatMap(t -> new ListEntries(t, SECTIONS).without(station)));
    }
}
