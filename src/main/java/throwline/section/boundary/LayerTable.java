package throwline.section.boundary;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import throwline.numerics.Interpolation;

/** Columns of numbers over the first one, which rises; straight between rows. Immutable. */
final class LayerTable {

    private final double[][] columns;

    private LayerTable(double[][] columns) {
        this.columns = columns;
    }

    /** A table of the jar. */
    static LayerTable load(String name) {
        try (InputStream in = LayerTable.class.getResourceAsStream("/throwline/section/" + name)) {
            if (in == null) {
                throw new IllegalStateException("missing from the jar: " + name);
            }
            List<double[]> rows = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> Arrays.stream(line.split(",", -1))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toList();
            double[][] columns = new double[rows.get(0).length][rows.size()];
            for (int i = 0; i < rows.size(); i++) {
                for (int k = 0; k < columns.length; k++) {
                    columns[k][i] = rows.get(i)[k];
                }
            }
            return new LayerTable(columns);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    double at(int column, double first) {
        return Interpolation.at(columns[0], columns[column], first);
    }

    double last(int column) {
        return columns[column][columns[column].length - 1];
    }

    /** Value of the first column at which another one, which falls, has a value. */
    double firstAt(int column, double value) {
        double[] falling = columns[column];
        int i = 0;
        while (i < falling.length - 2 && falling[i + 1] > value) {
            i++;
        }
        double share = (falling[i] - value) / (falling[i] - falling[i + 1]);
        return columns[0][i] + Interpolation.clamp(share, 0, 1) * (columns[0][i + 1] - columns[0][i]);
    }
}
