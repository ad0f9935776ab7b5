package throwline.input;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import throwline.section.SurrogateAirfoil;

/** Understands an airfoil given in words, such as "flat bottom 12 %" or "thin symmetrical", by a table of usual shapes. */
final class AirfoilWords {

    private static final Pattern PER_CENT = Pattern.compile("(\\d{1,2}(?:\\.\\d{1,2})?)\\s*(?:%|per ?cent)");
    private static final List<String> SAY_NOTHING = List.of("airfoil", "section", "wing", "profile", "about");
    private static final double THINNER = 0.8;
    private static final double THICKER = 1.2;
    private static final double THINNEST = 0.01;
    private static final double THICKEST = 0.25;

    private final List<Usual> usual;

    private record Usual(List<String> words, double thickness, double camber, double share, double moment) {}

    AirfoilWords() {
        try (InputStream in = AirfoilWords.class.getResourceAsStream("/throwline/airfoil-words.csv")) {
            if (in == null) {
                throw new IllegalStateException("the table of words for airfoils is missing from the jar");
            }
            usual = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(AirfoilWords::usual)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Usual usual(String line) {
        String[] cells = line.split(",", -1);
        return new Usual(
                List.of(cells[0].split(" ")), percent(cells[1]), percent(cells[2]), number(cells[3]), number(cells[4]));
    }

    private static double number(String cell) {
        return cell.isEmpty() ? Double.NaN : Double.parseDouble(cell);
    }

    private static double percent(String cell) {
        return number(cell) / 100;
    }

    /** The shape that these words mean; empty where any of them is not understood. */
    Optional<SurrogateAirfoil> read(String text) {
        String said = text.toLowerCase(Locale.ROOT).replace('-', ' ');
        Matcher percent = PER_CENT.matcher(said);
        double thickness = Double.NaN;
        if (percent.find()) {
            thickness = Double.parseDouble(percent.group(1)) / 100;
            said = said.substring(0, percent.start()) + " " + said.substring(percent.end());
        }
        List<String> words = new ArrayList<>(Arrays.asList(said.strip().split("\\s+")));
        words.removeAll(SAY_NOTHING);
        for (Usual shape : usual) {
            List<String> rest = new ArrayList<>(words);
            if (rest.containsAll(shape.words)) {
                shape.words.forEach(rest::remove);
                double factor = rest.remove("thin") ? THINNER : rest.remove("thick") ? THICKER : 1;
                double chosen = Double.isNaN(thickness) ? factor * shape.thickness : thickness;
                boolean understood = rest.isEmpty() && chosen >= THINNEST && chosen <= THICKEST;
                return understood ? Optional.of(likeness(shape, chosen)) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private static SurrogateAirfoil likeness(Usual shape, double thickness) {
        double camber = Double.isNaN(shape.share) ? shape.camber : shape.share * thickness;
        SurrogateAirfoil ordinary = SurrogateAirfoil.ordinary(thickness, camber);
        return Double.isNaN(shape.moment) ? ordinary : ordinary.withMoment(shape.moment);
    }
}
