package throwline.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.linkage.ControlRun.Reach;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Surface;
import throwline.study.Headline;
import throwline.study.Headline.Basis;
import throwline.study.ServoAnswer;
import throwline.study.ServoAnswer.LoadPoint;
import throwline.study.ServoAnswer.Position;
import throwline.study.ServoAnswer.SurfaceLoad;
import throwline.study.SetUpResult.Side;

/** Invented servos for the fixed results that wording is looked at with. */
final class ServoFixture {

    private static final double DEG = Math.PI / 180;

    private ServoFixture() {}

    /** Invented servos: loads in proportion to deflection and the square of the speed, an even linkage. */
    static ServoAnswer servos(Model model, SetUp setUp, double approach) {
        List<SurfaceLoad> loads = new ArrayList<>();
        List<Position> positions = new ArrayList<>();
        for (Surface surface : model.wing().surfaces()) {
            double angle = setUp.deflection(surface.name());
            List<LoadPoint> points = new ArrayList<>();
            for (double speed = approach; speed < 2.3 * approach; speed += approach / 4) {
                double torque = 0.0005 * speed * speed * (0.1 + Math.abs(angle));
                points.add(new LoadPoint(speed, angle == 0 ? "high rates" : "", angle, torque, Optional.of(torque)));
            }
            double comingIn = points.get(0).torque().orElseThrow();
            boolean rated = surface.name().equals("flaps");
            loads.add(new SurfaceLoad(
                    surface.name(),
                    rated ? Optional.of(0.3) : Optional.empty(),
                    !rated,
                    new Headline.Known(comingIn, comingIn, 1.5 * comingIn, Basis.ASSUMED),
                    rated ? Optional.of(approach * Math.sqrt(0.15 / comingIn)) : Optional.empty(),
                    points));
            positions.add(position(surface.name(), "", Side.BOTH, angle, 0.07));
            if (!rated) {
                positions.add(position(surface.name(), "high rates", Side.LEFT, angle + 18 * DEG, 0.065));
                positions.add(position(surface.name(), "high rates", Side.RIGHT, angle - 25 * DEG, 0.065));
            }
        }
        positions.add(position("elevator", "", Side.BOTH, setUp.elevator(), 0.065));
        Optional<Position> mix =
                setUp.isClean() ? Optional.empty() : Optional.of(position("elevator", "", Side.BOTH, 2 * DEG, 0.065));
        return new ServoAnswer(setUp.isClean() ? "" : "flaps", loads, positions, List.of(), mix);
    }

    static Headline limit(SetUp setUp, double approach) {
        return setUp.isClean()
                ? new Headline.Unknown("why.nothing-moved")
                : new Headline.Known(1.6 * approach, 1.3 * approach, 1.6 * approach, Basis.ASSUMED);
    }

    private static Position position(String surface, String stick, Side side, double angle, double chord) {
        boolean cut = angle < -25 * DEG;
        double share = angle / (45 * DEG);
        Reach reach = Math.abs(share) > 1 ? Reach.BEYOND_SWING : Reach.FREE;
        return new Position(
                surface, stick, side, angle, cut, share, chord, Optional.of(angle), Optional.of(share), reach, false);
    }
}
