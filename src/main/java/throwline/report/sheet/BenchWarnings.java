package throwline.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import throwline.linkage.ControlRun.Reach;
import throwline.report.SwingUse;
import throwline.study.ServoAnswer.Position;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** What is wrong, or could be better, with the linkages that a bench sheet asks for. */
final class BenchWarnings {

    private final SheetAnswer answer;
    private final SheetFigures figures;
    private final Words words;

    BenchWarnings(SheetAnswer answer, SheetFigures figures, Words words) {
        this.answer = answer;
        this.figures = figures;
        this.words = words;
    }

    List<String> all() {
        List<String> all = new ArrayList<>();
        for (SetUpResult result : answer.pack().setUps()) {
            for (Position p : result.servos().positions()) {
                reach(result.setUp().name(), p, all);
            }
        }
        for (SetUpResult result : answer.pack().setUps()) {
            result.notes().stream()
                    .filter(note -> note.code().equals("note.servo.overpowered"))
                    .map(note -> words.say(
                            "sheet.warn.overpowered",
                            String.valueOf(note.arguments().get(0)),
                            result.setUp().name()))
                    .forEach(all::add);
        }
        for (SwingUse use : SwingUse.of(answer.model(), answer.pack().setUps())) {
            if (use.wastesSwing()) {
                all.add(words.say(
                        "sheet.warn.wasted",
                        use.surface(),
                        figures.percent(Math.max(Math.abs(use.low()), Math.abs(use.high())))));
            }
            use.offset()
                    .ifPresent(offset -> all.add(words.say(
                            "sheet.warn.offset",
                            use.surface(),
                            figures.percent(use.low()),
                            figures.percent(use.high()),
                            String.format(Locale.ROOT, "%.1f", Math.toDegrees(offset)))));
        }
        return all;
    }

    private void reach(String setUp, Position p, List<String> all) {
        if (p.reach() == Reach.FREE) {
            return;
        }
        String where = p.stick().isEmpty() ? setUp : words.say("sheet.warn.where", setUp, p.stick());
        String code =
                switch (p.reach()) {
                    case LOCKED -> "sheet.warn.locked";
                    case BEYOND_SWING -> "sheet.warn.beyond";
                    case SLACKENING, FREE -> "sheet.warn.slackening";
                };
        all.add(words.say(code, p.surface(), where, figures.angle(p.angle())));
    }
}
