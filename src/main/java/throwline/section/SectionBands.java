package throwline.section;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Bands of the figures of a section, by what they rest on; from one resource file. Immutable. */
public final class SectionBands {

    /** Below this Reynolds number bubbles scatter drag. */
    private static final double SLOW = 80_000;

    /** Shares and angles; of a row one of relative and absolute is zero. */
    private static final List<String> FIGURES = List.of(
            "section.maxLift", "section.stallAngle", "section.zeroLiftAngle", "section.drag", "section.drag.slow");

    private static final int CELLS = 10;

    private final Map<Basis, double[]> rows = new EnumMap<>(Basis.class);

    private SectionBands() {}

    /**
     * Nine of ten errors are smaller than this.
     *
     * @param maxLift share of maximum lift
     * @param stallAngle rad
     * @param zeroLiftAngle rad
     * @param drag share of drag
     */
    public record Band(double maxLift, double stallAngle, double zeroLiftAngle, double drag) {}

    /** The bands of the product. */
    public static SectionBands load() {
        SectionBands bands = new SectionBands();
        try (InputStream in = SectionBands.class.getResourceAsStream("/throwline/bands.csv")) {
            if (in == null) {
                throw new IllegalStateException("the file of section bands is missing from the jar");
            }
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> line.startsWith("section."))
                    .map(line -> line.split(",", CELLS))
                    .forEach(bands::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bands;
    }

    private void add(String[] cells) {
        double[] row = rows.computeIfAbsent(Basis.valueOf(cells[1]), basis -> new double[FIGURES.size()]);
        row[FIGURES.indexOf(cells[0])] = Double.parseDouble(cells[2]) + Double.parseDouble(cells[3]);
    }

    /**
     * The band of a curve's figures.
     *
     * @param basis what they rest on
     * @param reynolds Reynolds number
     */
    public Band of(Basis basis, double reynolds) {
        double[] row = rows.get(basis);
        if (row == null) {
            throw new IllegalArgumentException("no band for " + basis);
        }
        return new Band(row[0], row[1], row[2], reynolds < SLOW ? row[4] : row[3]);
    }
}
