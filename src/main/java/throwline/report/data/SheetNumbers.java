package throwline.report.data;

import java.util.ArrayList;
import java.util.List;
import throwline.model.Model;
import throwline.report.ElevatorMixes;
import throwline.study.Comparison.PackResult;
import throwline.study.Headline;
import throwline.study.HeadlineNumbers;
import throwline.study.ServoAnswer.Position;
import throwline.study.SetUpResult;

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
            result.headlines().all().forEach(entry -> headline(all, setUp, entry));
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
        String side = Codes.of(p.side());
        all.add(SheetEntry.of(setUp, p.surface(), stick, side, "angle", "deg", p.angle() * DEGREE));
        all.add(SheetEntry.of(setUp, p.surface(), stick, side, "straight", "m", p.straight()));
        all.add(SheetEntry.of(setUp, p.surface(), stick, side, "vertical", "m", p.vertical()));
        all.add(SheetEntry.of(setUp, p.surface(), stick, side, "travel", "", p.travelShare()));
        p.servo()
                .ifPresent(servo ->
                        all.add(SheetEntry.of(setUp, p.surface(), stick, side, "servo", "deg", servo * DEGREE)));
        p.swingShare().ifPresent(swing -> all.add(SheetEntry.of(setUp, p.surface(), stick, side, "swing", "", swing)));
    }

    private static void headline(List<SheetEntry> all, String setUp, HeadlineNumbers.Entry entry) {
        DataUnit unit = DataUnit.of(entry.quantity().dimension());
        String key = entry.quantity().key();
        String stick = entry.stick();
        if (entry.number() instanceof Headline.Known known) {
            all.add(SheetEntry.of(setUp, "", stick, "", key, unit.symbol(), known.value() * unit.factor()));
            all.add(SheetEntry.of(setUp, "", stick, "", key + ".low", unit.symbol(), known.low() * unit.factor()));
            all.add(SheetEntry.of(setUp, "", stick, "", key + ".high", unit.symbol(), known.high() * unit.factor()));
        } else {
            all.add(new SheetEntry(setUp, "", stick, "", key, unit.symbol(), ""));
        }
    }
}
