package throwline.report.data;

import java.util.ArrayList;
import java.util.List;
import throwline.model.Model;
import throwline.report.EdgeThrow;
import throwline.report.ElevatorMixes;
import throwline.study.Comparison.PackResult;
import throwline.study.Headline;
import throwline.study.ServoAnswer.Position;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.RollRate;

/** The numbers of the sheets of one pack, set-up by set-up. */
public final class SheetNumbers {

    private static final double DEGREE = Math.toDegrees(1);

    private SheetNumbers() {}

    /** What stands for a stick where the elevator's mix is meant. */
    public static final String MIX = "mix";

    /** All of them. */
    public static List<SheetEntry> of(Model model, PackResult pack) {
        List<SheetEntry> all = new ArrayList<>();
        for (SetUpResult result : pack.setUps()) {
            String setUp = result.setUp().name();
            for (Position p : result.servos().positions()) {
                position(all, setUp, p.stick(), p);
            }
            result.servos().mix().ifPresent(mix -> position(all, setUp, MIX, mix));
            predictions(all, setUp, result);
        }
        for (ElevatorMixes.Mix mix : ElevatorMixes.of(model, pack.setUps())) {
            String at = MIX + " at " + JsonWriter.number(mix.speed()) + " m/s";
            all.add(SheetEntry.of(mix.setUp(), "elevator", at, "", "elevator", "deg", mix.elevator() * DEGREE));
            all.add(SheetEntry.of(mix.setUp(), "elevator", at, "", "change", "deg", mix.change() * DEGREE));
            all.add(SheetEntry.of(mix.setUp(), "elevator", at, "", "half", "deg", mix.half() * DEGREE));
        }
        return all;
    }

    private static void position(List<SheetEntry> all, String setUp, String stick, Position p) {
        EdgeThrow edge = new EdgeThrow(p.chord());
        String side = Codes.of(p.side());
        all.add(SheetEntry.of(setUp, p.surface(), stick, side, "angle", "deg", p.angle() * DEGREE));
        all.add(SheetEntry.of(setUp, p.surface(), stick, side, "straight", "m", edge.distance(p.angle())));
        all.add(SheetEntry.of(setUp, p.surface(), stick, side, "vertical", "m", edge.height(p.angle())));
        all.add(SheetEntry.of(setUp, p.surface(), stick, side, "travel", "", p.travelShare()));
        p.servo()
                .ifPresent(servo ->
                        all.add(SheetEntry.of(setUp, p.surface(), stick, side, "servo", "deg", servo * DEGREE)));
        p.swingShare().ifPresent(swing -> all.add(SheetEntry.of(setUp, p.surface(), stick, side, "swing", "", swing)));
    }

    private static void predictions(List<SheetEntry> all, String setUp, SetUpResult r) {
        headline(all, setUp, "", "stallSpeed", "m/s", 1, r.stallSpeed());
        headline(all, setUp, "", "approachSpeed", "m/s", 1, r.approachSpeed());
        headline(all, setUp, "", "descentAngle", "deg", DEGREE, r.descentAngle());
        headline(all, setUp, "", "sinkRate", "m/s", 1, r.sinkRate());
        headline(all, setUp, "", "elevator", "deg", DEGREE, r.elevator());
        headline(all, setUp, "", "elevatorChange", "deg", DEGREE, r.elevatorChange());
        headline(all, setUp, "", "flapSpeedLimit", "m/s", 1, r.servos().flapSpeedLimit());
        headline(all, setUp, "", "flareHeight", "m", 1, r.field().flareHeight());
        headline(all, setUp, "", "float", "m", 1, r.field().floatDistance());
        headline(all, setUp, "", "landingDistance", "m", 1, r.field().landing());
        headline(all, setUp, "", "gustLimit", "m/s", 1, r.field().gustLimit());
        for (RollRate roll : r.rollRates()) {
            headline(all, setUp, roll.stick(), "rollRate", "deg/s", DEGREE, roll.rate());
        }
    }

    private static void headline(
            List<SheetEntry> all,
            String setUp,
            String stick,
            String quantity,
            String unit,
            double factor,
            Headline headline) {
        if (headline instanceof Headline.Known known) {
            all.add(SheetEntry.of(setUp, "", stick, "", quantity, unit, known.value() * factor));
            all.add(SheetEntry.of(setUp, "", stick, "", quantity + ".low", unit, known.low() * factor));
            all.add(SheetEntry.of(setUp, "", stick, "", quantity + ".high", unit, known.high() * factor));
        } else {
            all.add(new SheetEntry(setUp, "", stick, "", quantity, unit, ""));
        }
    }
}
