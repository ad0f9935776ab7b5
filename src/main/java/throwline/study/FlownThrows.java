package throwline.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.notes.FlightNotes;
import throwline.notes.FlownDay;

/**
 * Throws that the set-ups of a model have, had on days, or are tried with. A set-up whose throws are others by more than three
 * degrees is another one, and the less like the first the further they lie apart. Methods manual 21.1.
 */
final class FlownThrows {

    /** Throws within this are the same for what was learnt, and own errors have nothing in common from there on, rad (PRACTICE). */
    private static final double SAME = Math.toRadians(3);

    private static final double UNLIKE = Math.toRadians(20);

    /** Throws written down on two days are one set-up within their rounding, rad. */
    private static final double ROUNDING = Math.toRadians(0.1);

    /** What a row of cosines has left below this is rounding. */
    private static final double NOTHING = 1e-9;

    private final Model model;
    private final Map<String, List<SetUp>> standings = new LinkedHashMap<>();
    private final Map<String, String> onDay = new HashMap<>();
    private final Map<String, String> tried = new HashMap<>();

    /**
     * @param model as its file has it
     * @param notes flights of it
     * @param tried the same model with other throws
     */
    FlownThrows(Model model, FlightNotes notes, Optional<Model> tried) {
        this.model = model;
        model.setUps().forEach(setUp -> standings.put(setUp.name(), new ArrayList<>(List.of(setUp))));
        List<FlownDay> days = notes.counted().stream()
                .sorted(Comparator.comparing(FlownDay::name))
                .toList();
        for (FlownDay day : days) {
            for (SetUp flown : day.asFlown()) {
                boolean asNow = model.setUps().stream()
                        .anyMatch(now -> now.name().equals(flown.name()) && apart(now, flown) <= SAME);
                if (!asNow) {
                    onDay.put(key(day.name(), flown.name()), onDay(flown, flown.name() + " as on " + day.name()));
                }
            }
        }
        for (SetUp setUp : tried.map(Model::setUps).orElse(List.of())) {
            if (!model.setUps().contains(setUp)) {
                this.tried.put(setUp.name(), tried(setUp, setUp.name() + " as tried"));
            }
        }
    }

    private String tried(SetUp setUp, String name) {
        standings
                .computeIfAbsent(setUp.name(), own -> new ArrayList<>())
                .add(new SetUp(name, setUp.deflections(), setUp.elevator()));
        return name;
    }

    /** The name of these throws: that of the same ones on an earlier day, or a new one. */
    private String onDay(SetUp setUp, String name) {
        List<SetUp> known = standings.computeIfAbsent(setUp.name(), own -> new ArrayList<>());
        Optional<SetUp> same = known.stream()
                .filter(other -> onDay.containsValue(other.name()) && apart(other, setUp) <= ROUNDING)
                .findFirst();
        return same.map(SetUp::name).orElseGet(() -> {
            known.add(new SetUp(name, setUp.deflections(), setUp.elevator()));
            return name;
        });
    }

    private static String key(String day, String setUp) {
        return day + "\n" + setUp;
    }

    private double apart(SetUp one, SetUp other) {
        return model.wing().surfaces().stream()
                .mapToDouble(s -> Math.abs(one.deflection(s.name()) - other.deflection(s.name())))
                .max()
                .orElse(0);
    }

    /** Throws that stood on a day and are not those of the file, each under a name of its own. */
    List<SetUp> onDays() {
        return standings.values().stream()
                .flatMap(List::stream)
                .filter(setUp -> onDay.containsValue(setUp.name()))
                .toList();
    }

    /** The name of a set-up's throws on a day. */
    String on(FlownDay day, String setUp) {
        return onDay.getOrDefault(key(day.name(), setUp), setUp);
    }

    /** The name of a set-up's throws as they are tried; that of the file where none are. */
    String tried(String setUp) {
        return tried.getOrDefault(setUp, setUp);
    }

    /** Whether two throws, by their names, are the same for what was learnt. */
    boolean areSame(String one, String other) {
        return one.equals(other) || like(standing(one), standing(other)) == 1;
    }

    private SetUp standing(String name) {
        return standings.values().stream()
                .flatMap(List::stream)
                .filter(setUp -> setUp.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no throws " + name));
    }

    /** Correlation of own errors. */
    private double like(SetUp one, SetUp other) {
        double apart = apart(one, other);
        return apart <= SAME ? 1 : Math.max(0, 1 - apart / UNLIKE);
    }

    /**
     * What the own error of these throws has of those of others: a row of the Cholesky factor of their correlations. Where
     * three of them cannot all be so alike, the row is made shorter until it can be.
     *
     * @param name of the throws
     * @param known which others have errors
     * @return cosines by name
     */
    Map<String, Double> ownPart(String name, Predicate<String> known) {
        List<SetUp> group = standings.values().stream()
                .filter(all -> all.stream().anyMatch(setUp -> setUp.name().equals(name)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no throws " + name));
        List<SetUp> before = group.stream()
                .takeWhile(setUp -> !setUp.name().equals(name))
                .filter(setUp -> known.test(setUp.name()))
                .toList();
        List<double[]> rows = new ArrayList<>();
        for (SetUp setUp : before) {
            rows.add(row(setUp, before, rows));
        }
        double[] own = row(standing(name), before, rows);
        Map<String, Double> part = new LinkedHashMap<>();
        for (int k = 0; k < before.size(); k++) {
            if (own[k] != 0) {
                part.put(before.get(k).name(), own[k]);
            }
        }
        return part;
    }

    private double[] row(SetUp setUp, List<SetUp> before, List<double[]> rows) {
        int n = rows.size();
        double[] row = new double[n + 1];
        double squares = 0;
        for (int k = 0; k < n; k++) {
            double[] other = rows.get(k);
            double sum = like(setUp, before.get(k));
            for (int m = 0; m < k; m++) {
                sum -= row[m] * other[m];
            }
            row[k] = other[k] > NOTHING ? sum / other[k] : 0;
            squares += row[k] * row[k];
        }
        if (squares > 1) {
            for (int k = 0; k < n; k++) {
                row[k] /= Math.sqrt(squares);
            }
        }
        row[n] = Math.sqrt(Math.max(0, 1 - squares));
        return row;
    }
}
