package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.correction.Doubt;
import throwline.correction.Expectation;
import throwline.correction.Factor;
import throwline.correction.Factors;
import throwline.correction.FlownRows;
import throwline.correction.Flying;
import throwline.correction.MixtureUpdate;
import throwline.correction.NotedReadings;
import throwline.correction.Posterior;
import throwline.correction.Reading;
import throwline.correction.RowBand;
import throwline.input.FlightsFile;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadFlights;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.notes.FlightNotes;
import throwline.section.MeasuredSections;

/**
 * Aeroplanes drawn from the bands, flown and noted with errors, and learnt from: how often the truth lies inside the bands
 * after. Nine of ten is meant; a share of so many draws errs by about 3 %.
 */
class LearnCoverageTest {

    private static final int AEROPLANES = Integer.getInteger("throwline.coverage", 200);

    /** A longer season takes so many times as long to learn from. */
    private static final int LONG = 4;

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();

    private static final String NOTES = """
            throwline flights: 1
            flights:
              - date: 2026-10-04
                wind: {speed: 2 m/s, told by: feel}
                PACK
                noticed:
                  - {what: stall, set-up: SECOND, ground speed: 31 km/h, going: into the wind}
                  - {what: stall, set-up: FIRST, ground speed: 34 km/h, going: both ways}
                  - {what: glide, set-up: FIRST, height: 30 m, distance: 210 m, time: 20 s, going: into the wind,
                     told by: barometer}
                  - {what: trim, set-up: SECOND, elevator: 1 mm down, told by: bench}
                  - {what: roll, set-up: FIRST, stick: STICK, rolls: 1, time: 4 s, told by: stopwatch}
              - date: 2026-10-11
                wind: {speed: 1 m/s, told by: flag}
                PACK
                noticed:
                  - {what: glide, set-up: SECOND, height: 30 m, time: 12 s, told by: barometer}
                  - {what: stall, set-up: SECOND, ground speed: 31 km/h, going: with the wind}
            """;

    /** Two more days: sixteen sources, so that of one in five three or four are wrong at once. */
    private static final String LONGER = NOTES + """
              - date: 2026-10-18
                wind: {speed: 3 m/s, told by: anemometer}
                PACK
                noticed:
                  - {what: glide, set-up: FIRST, height: 30 m, distance: 200 m, time: 19 s, going: with the wind,
                     told by: landmarks}
                  - {what: path, set-up: SECOND, height: 10 m, distance: 40 m, going: into the wind}
                  - {what: trim, set-up: FIRST, trimmed by: 1 mm up, told by: feel}
              - date: 2026-10-25
                wind: {speed: 1 m/s, told by: feel}
                PACK
                noticed:
                  - {what: roll, set-up: FIRST, stick: STICK, rolls: 2, time: 6 s, told by: stopwatch}
                  - {what: stall, set-up: FIRST, ground speed: 33 km/h, going: into the wind}
            """;

    @ParameterizedTest
    @CsvSource({
        "orchard, 0, false, 0.83",
        "orchard, 0.05, false, 0.83",
        "orchard, 0.2, false, 0.8",
        "ridgeline, 0, false, 0.83",
        "ridgeline, 0.05, false, 0.83",
        "ridgeline, 0.2, false, 0.8",
        "saltmarsh, 0, false, 0.83",
        "saltmarsh, 0.05, false, 0.83",
        "saltmarsh, 0.2, false, 0.8",
        "orchard, 0, true, 0.78",
        "orchard, 0.2, true, 0.78",
        "ridgeline, 0.2, true, 0.78",
        "saltmarsh, 0.2, true, 0.78"
    })
    void holds_the_truth(String example, double wrong, boolean longer, double least) {
        Model model = ((ReadModel.Project) ModelFile.read(Path.of("examples/" + example + ".yaml"), AIRFOILS)).model();
        Comparison plain = new ComparisonStudy(new MeasuredSections(), Bands.load())
                .compare(model, AIRFOILS, model.packs().subList(0, 1));
        FlightNotes notes = notes(model, longer);
        Factors factors = new Factors();
        FlownFleet fleet = FlownFleet.of(
                plain,
                Optional.empty(),
                notes,
                factors,
                new FlownFleet.Tools(AIRFOILS, new MeasuredSections(), Bands.load()));
        List<Reading> expected = new ArrayList<>();
        notes.days().forEach(day -> expected.addAll(new NotedReadings(factors, fleet, day, model.field()).all()));
        Map<String, Expectation> rows = rows(model, fleet);
        Tally tally = new Tally();
        RandomGenerator random = new Well19937c(20_261);
        for (int n = 0; n < (longer ? AEROPLANES / LONG : AEROPLANES); n++) {
            fly(factors.all(), expected, rows, random, wrong, tally);
        }
        if (Boolean.getBoolean("throwline.show")) {
            System.err.println(example + " " + wrong + " " + longer + tally);
        }
        tally.inside.forEach((kind, inside) -> {
            assertThat(inside / (double) tally.of.getOrDefault(kind, 1))
                    .as(kind + tally)
                    .isBetween(least, longer ? 0.99 : 0.97);
            if (wrong == 0) {
                assertThat(tally.after.get(kind)).as(kind).isLessThan(tally.before.get(kind));
            }
        });
        assertThat(tally.falseAlarms / (double) Math.max(1, tally.good)).isLessThan(longer ? 0.02 : 0.01);
    }

    private static FlightNotes notes(Model model, boolean longer) {
        String text = (longer ? LONGER : NOTES)
                .replace("PACK", "pack: " + model.packs().get(0).name())
                .replace("FIRST", model.setUps().get(0).name())
                .replace("STICK", stick(model))
                .replace("SECOND", model.setUps().get(2).name());
        return ((ReadFlights.Notes) FlightsFile.read(text, "notes.yaml", model)).notes();
    }

    /** A roll stick that works in every set-up. */
    private static String stick(Model model) {
        return model.sticks().stream()
                .filter(s -> s instanceof Stick.Roll && s.in().isEmpty())
                .findFirst()
                .orElseThrow()
                .name();
    }

    /** Rows by kind and whether their set-up was flown. */
    private static Map<String, Expectation> rows(Model model, FlownFleet fleet) {
        Map<String, Expectation> rows = new TreeMap<>();
        List<SetUp> setUps = model.setUps();
        for (int i = 0; i < setUps.size(); i++) {
            String flown = List.of(0, 2).contains(i) ? " flown " : " not flown ";
            Flying flying =
                    fleet.now(setUps.get(i).name(), model.packs().get(0).name()).orElseThrow();
            FlownRows row = new FlownRows(flying, 1.3);
            rows.put("stall" + flown + i, row.stall());
            rows.put("descent" + flown + i, row.descent());
            rows.put("elevator" + flown + i, row.elevator());
            if (!Double.isNaN(flying.predicted().rollPerSpeed(stick(model)))) {
                rows.put("roll" + (i == 0 ? " flown " : " not flown ") + i, row.roll(stick(model)));
            }
        }
        return rows;
    }

    /** What was counted, by kind. */
    private static final class Tally {
        private final Map<String, Integer> of = new TreeMap<>();
        private final Map<String, Integer> inside = new TreeMap<>();
        private final Map<String, Double> before = new TreeMap<>();
        private final Map<String, Double> after = new TreeMap<>();
        private int good;
        private int falseAlarms;

        void count(String kind, boolean in, double missBefore, double missAfter) {
            of.merge(kind, 1, Integer::sum);
            inside.merge(kind, in ? 1 : 0, Integer::sum);
            before.merge(kind, missBefore * missBefore, Double::sum);
            after.merge(kind, missAfter * missAfter, Double::sum);
        }

        @Override
        public String toString() {
            StringBuilder text = new StringBuilder();
            of.forEach((kind, n) -> text.append(String.format(
                    Locale.ROOT,
                    "%n  %s: inside %.3f, rms before %.4f after %.4f",
                    kind,
                    inside.getOrDefault(kind, 0) / (double) n,
                    Math.sqrt(before.getOrDefault(kind, 0.0) / n),
                    Math.sqrt(after.getOrDefault(kind, 0.0) / n))));
            return text + String.format(Locale.ROOT, "%n  false alarms %d of %d", falseAlarms, good);
        }
    }

    private static void fly(
            List<Factor> factors,
            List<Reading> expected,
            Map<String, Expectation> rows,
            RandomGenerator random,
            double wrong,
            Tally tally) {
        double[] truth = factors.stream()
                .mapToDouble(f -> f.mean() + f.sd() * random.nextGaussian())
                .toArray();
        List<Reading> noted = new ArrayList<>();
        Map<String, Double> slips = new TreeMap<>();
        for (Reading reading : expected) {
            double slip = slips.computeIfAbsent(
                    reading.source(),
                    s -> random.nextDouble() < wrong
                            ? (random.nextBoolean() ? 1 : -1) * (4 + 8 * random.nextDouble())
                            : 0);
            double value = reading.expected().at(truth) + reading.sd() * (random.nextGaussian() + slip);
            noted.add(new Reading(reading.source(), value, reading.sd(), reading.expected()));
        }
        Posterior posterior = MixtureUpdate.learn(factors, noted);
        rows.forEach((name, row) -> {
            RowBand band = RowBand.of(posterior, row, 0, 1);
            double actual = row.at(truth);
            tally.count(
                    name.substring(0, name.lastIndexOf(' ')),
                    actual >= band.lowAfter() && actual <= band.highAfter(),
                    actual - band.before(),
                    actual - band.after());
        });
        slips.forEach((source, slip) -> {
            if (slip == 0) {
                tally.good++;
                tally.falseAlarms += posterior.wrong().getOrDefault(source, 0.0) > Doubt.CONTRADICTS ? 1 : 0;
            }
        });
    }
}
