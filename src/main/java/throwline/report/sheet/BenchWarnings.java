package throwline.report.sheet;

import java.util.ArrayList;
import java.util.List;
import throwline.linkage.ControlRun.Reach;
import throwline.report.SwingUse;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.ServoAnswer.Position;
import throwline.study.SetUpResult;

/** Faults of the linkages that a bench sheet asks for, and what could be better with them. */
final class BenchWarnings {

    private final SheetAnswer answer;

    BenchWarnings(SheetAnswer answer) {
        this.answer = answer;
    }

    List<Text> all() {
        List<Text> all = new ArrayList<>();
        for (SetUpResult result : answer.pack().setUps()) {
            for (Position p : result.servos().positions()) {
                reach(result.setUp().name(), p, all);
            }
        }
        for (SetUpResult result : answer.pack().setUps()) {
            result.notes().stream()
                    .filter(note -> note.code().equals("note.servo.overpowered"))
                    .map(note -> Text.say(
                            "sheet.warn.overpowered",
                            note.arguments().get(0),
                            result.setUp().name()))
                    .forEach(all::add);
        }
        for (SwingUse use : SwingUse.of(answer.model(), answer.pack().setUps())) {
            Value low = Value.share(use.low());
            Value high = Value.share(use.high());
            if (use.wastesSwing()) {
                Value most = Value.share(Math.max(Math.abs(use.low()), Math.abs(use.high())));
                all.add(Text.say("sheet.warn.wasted", use.surface(), most));
            }
            use.offset()
                    .map(offset -> new Value.Plain(Math.toDegrees(offset), 1))
                    .ifPresent(offset -> all.add(Text.say("sheet.warn.offset", use.surface(), low, high, offset)));
        }
        return all;
    }

    private void reach(String setUp, Position p, List<Text> all) {
        if (p.reach() == Reach.FREE) {
            return;
        }
        Text where = p.stick().isEmpty() ? Text.name(setUp) : Text.say("sheet.warn.where", setUp, p.stick());
        String code =
                switch (p.reach()) {
                    case LOCKED -> "sheet.warn.locked";
                    case BEYOND_SWING -> "sheet.warn.beyond";
                    case SLACKENING, FREE -> "sheet.warn.slackening";
                };
        all.add(Text.say(code, p.surface(), where, Value.of(p.angle(), Value.Kind.DEFLECTION_TENTHS)));
    }
}
