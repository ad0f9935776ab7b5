package throwline.study;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/** Bands of headline numbers, from one resource file; no band is written in code. */
public final class Bands {

    private final Map<String, Band> bands = new HashMap<>();

    private Bands() {}

    /** The bands of the product. */
    public static Bands load() {
        Bands loaded = new Bands();
        try (InputStream in = Bands.class.getResourceAsStream("/throwline/bands.csv")) {
            if (in == null) {
                throw new IllegalStateException("the file of bands is missing from the jar");
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("quantity,"))
                    .map(line -> line.split(",", 5))
                    .forEach(cells -> loaded.bands.put(
                            cells[0],
                            new Band(Double.parseDouble(cells[1]), Double.parseDouble(cells[2]), cells[3], cells[4])));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return loaded;
    }

    /**
     * A value with its band.
     *
     * @param quantity key in the file
     * @param value in SI units
     */
    public Headline.Known around(String quantity, double value) {
        return around(quantity, value, value, value);
    }

    /**
     * A value with its band, at least as wide as given.
     *
     * @param quantity key in the file
     * @param value in SI units
     * @param low the band reaches at least this low
     * @param high the band reaches at least this high
     */
    public Headline.Known around(String quantity, double value, double low, double high) {
        Band band = band(quantity);
        double half = Math.max(band.relative * Math.abs(value), band.absolute);
        Headline.Basis basis = band.mark.equals("PRACTICE") ? Headline.Basis.ASSUMED : Headline.Basis.MEASURED;
        return new Headline.Known(value, Math.min(low, value - half), Math.max(high, value + half), basis);
    }

    /** What a band rests on, as the file of bands says it. */
    public String source(String quantity) {
        return band(quantity).source;
    }

    private Band band(String quantity) {
        Band band = bands.get(quantity);
        if (band == null) {
            throw new IllegalArgumentException("no band for " + quantity);
        }
        return band;
    }

    private record Band(double relative, double absolute, String mark, String source) {}
}
