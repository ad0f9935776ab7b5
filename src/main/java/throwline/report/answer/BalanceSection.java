package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import throwline.flight.ElevatorBreakdown;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.FlyResult;
import throwline.study.FlyResult.Balance;
import throwline.study.Headline;

/** Balance, where the elevator sits, and why. */
final class BalanceSection {

    /** Less than this at the trailing edge is no throw: it cannot be set, m (common practice, no source). */
    private static final double UNSEEN = 1.3e-4;

    private BalanceSection() {}

    static List<Paragraph> blocks(FlyResult result) {
        List<Paragraph> said = new ArrayList<>();
        double chord = result.model().tail().throwChord();
        result.balance().ifPresent(b -> {
            b.stabilityMargin()
                    .ifPresent(margin -> said.add(Paragraph.say(
                            margin >= 0 ? "fly.balance.margin" : "fly.balance.unstable",
                            Value.share(Math.abs(margin)),
                            b.neutralPoint()
                                    .<Text>map(place -> Value.of(place, Value.Kind.PLACE))
                                    .orElse(Text.none()))));
            said.add(Paragraph.say("fly.balance.tail", Value.angle(b.tailMargin())));
            said.add(cruise(b, chord));
            b.why().ifPresent(why -> why(said, why, chord));
        });
        return said;
    }

    private static Paragraph cruise(Balance b, double chord) {
        return b.elevatorAtCruise() instanceof Headline.Known known
                ? Paragraph.say(
                        "fly.balance.cruise", Value.speed(b.cruiseSpeed()), new Value.Edge(known.value(), chord))
                : Paragraph.say(
                        "fly.balance.no-cruise",
                        Value.speed(b.cruiseSpeed()),
                        Text.say(((Headline.Unknown) b.elevatorAtCruise()).why()));
    }

    private static void why(List<Paragraph> said, ElevatorBreakdown why, double chord) {
        double total = why.camber() + why.downwash() + why.dragArm() + why.wake() + why.attitude() + why.rest();
        said.add(Paragraph.say(stays(total, chord) ? "fly.why.stays" : "fly.why", new Value.Edge(total, chord)));
        part(said, "fly.why.camber", why.camber(), chord);
        part(said, "fly.why.downwash", why.downwash(), chord);
        part(said, "fly.why.drag", why.dragArm(), chord);
        part(said, "fly.why.wake", why.wake(), chord);
        part(said, "fly.why.attitude", why.attitude(), chord);
        part(said, "fly.why.rest", why.rest(), chord);
    }

    private static void part(List<Paragraph> said, String key, double angle, double chord) {
        Text moved = stays(angle, chord) ? Text.say("fly.why.none") : new Value.Edge(angle, chord);
        said.add(Paragraph.of(Role.REMARK, Text.say(key, moved)));
    }

    /** True where a throw is too small to be set. */
    static boolean stays(double angle, double chord) {
        return Math.abs(chord * angle) < UNSEEN;
    }
}
