package throwline.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BisectionSolver;
import throwline.model.Propeller;
import throwline.power.BladeElements;
import throwline.power.Coefficients;
import throwline.power.DriveFitting;

/**
 * Propellers alone in the tunnel, known by size and kind; every row is a propeller, an advance ratio and a quantity. Errors
 * after one reading are those of all thrust or power rows of the propeller, root mean square over the first value, with the
 * chord set from its first thrust.
 */
final class PropellerCase implements CaseKind {

    private static final double INCH = 0.0254;
    private static final double MINUTE = 60;
    private static final String THRUST = "thrust coefficient";
    private static final String POWER = "power coefficient";

    /** Ends between which the chord is set, over the radius (methods manual 20.6). */
    private static final double NARROWEST = 0.10;

    private static final double WIDEST = 0.36;
    private static final int MOST_HALVINGS = 60;

    /** Advance ratios at which the largest efficiency is looked for. */
    private static final double ADVANCE_STEP = 0.01;

    private static final double LAST_ADVANCE = 1.5;

    @Override
    public CaseResult run(CaseFile file) throws UnreadableCase {
        List<Check> checks = new ArrayList<>();
        for (CaseRow row : file.rows()) {
            checks.add(Check.of(row, read(row, file.rows())));
        }
        return CaseResult.of(file, checks, List.of());
    }

    private static double read(CaseRow row, List<CaseRow> all) throws UnreadableCase {
        BladeElements blades = blades(row, DriveFitting.chordOf(kind(row)));
        return switch (row.text("quantity")) {
            case THRUST -> at(row, blades).thrust();
            case POWER -> at(row, blades).power();
            case "largest efficiency" -> efficiency(blades, turns(row));
            case "thrust error after one reading" -> errorAfterReading(row, all, THRUST, Coefficients::thrust);
            case "power error after one reading" -> errorAfterReading(row, all, POWER, Coefficients::power);
            default -> throw row.wrong("quantity", "case.quantity");
        };
    }

    private static Propeller.Kind kind(CaseRow row) throws UnreadableCase {
        try {
            return Propeller.Kind.valueOf(
                    row.text("kind").toUpperCase(Locale.ROOT).replace(' ', '_'));
        } catch (IllegalArgumentException e) {
            throw row.wrong("kind", "case.quantity");
        }
    }

    private static BladeElements blades(CaseRow row, double chord) throws UnreadableCase {
        return new BladeElements(
                row.number("diameter [in]") * INCH,
                row.number("pitch [in]") * INCH,
                (int) row.number("blades", 2),
                chord);
    }

    private static double turns(CaseRow row) throws UnreadableCase {
        return row.number("turns [rpm]") / MINUTE;
    }

    private static Coefficients at(CaseRow row, BladeElements blades) throws UnreadableCase {
        return blades.at(row.number("advance ratio"), turns(row));
    }

    private static double efficiency(BladeElements blades, double turns) {
        double best = 0;
        for (double advance = ADVANCE_STEP; advance < LAST_ADVANCE; advance += ADVANCE_STEP) {
            Coefficients c = blades.at(advance, turns);
            if (c.thrust() <= 0 || c.power() <= 0) {
                break;
            }
            best = Math.max(best, advance * c.thrust() / c.power());
        }
        return best;
    }

    private static double errorAfterReading(
            CaseRow row, List<CaseRow> all, String quantity, ToDoubleFunction<Coefficients> coefficient)
            throws UnreadableCase {
        List<CaseRow> own = all.stream()
                .filter(other -> other.text("propeller").equals(row.text("propeller")))
                .toList();
        List<CaseRow> thrusts = of(own, THRUST);
        List<CaseRow> asked = of(own, quantity);
        if (thrusts.isEmpty() || asked.isEmpty()) {
            throw row.wrong("propeller", "case.quantity");
        }
        BladeElements blades = blades(row, chord(thrusts.get(0)));
        double first = asked.get(0).number("value");
        double squares = 0;
        for (CaseRow each : asked) {
            squares += Math.pow((coefficient.applyAsDouble(at(each, blades)) - each.number("value")) / first, 2);
        }
        return Math.sqrt(squares / asked.size());
    }

    private static List<CaseRow> of(List<CaseRow> rows, String quantity) {
        return rows.stream()
                .filter(row -> row.text("quantity").equals(quantity))
                .toList();
    }

    /** Chord that gives the thrust of a row. */
    private static double chord(CaseRow row) throws UnreadableCase {
        double advance = row.number("advance ratio");
        double turns = turns(row);
        double diameter = row.number("diameter [in]") * INCH;
        double pitch = row.number("pitch [in]") * INCH;
        int count = (int) row.number("blades", 2);
        double wanted = row.number("value");
        UnivariateFunction missing = chord -> new BladeElements(diameter, pitch, count, chord)
                        .at(advance, turns)
                        .thrust()
                - wanted;
        return new BisectionSolver(1e-6).solve(MOST_HALVINGS, missing, NARROWEST, WIDEST);
    }
}
