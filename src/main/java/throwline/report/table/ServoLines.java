package throwline.report.table;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import throwline.report.EdgeThrow;
import throwline.report.Headlines;
import throwline.report.Page;
import throwline.report.document.Figures;
import throwline.study.Headline;
import throwline.study.ServoAnswer;
import throwline.study.ServoAnswer.LoadPoint;
import throwline.study.ServoAnswer.Position;
import throwline.study.ServoAnswer.SurfaceLoad;
import throwline.study.SetUpResult.Side;
import throwline.units.Dimension;
import throwline.units.QuantityPrinter;
import throwline.words.Words;

/** What the servos have to do in one set-up, and where they stand: two small tables. */
final class ServoLines {

    private final Page page;
    private final Words words;
    private final Figures figures;
    private final QuantityPrinter printer;

    ServoLines(Page page, Words words) {
        this.page = page;
        this.words = words;
        figures = new Figures(page, words);
        printer = new QuantityPrinter(page.units());
    }

    /** A line a servo: what it has to hold when coming in, and how fast that stays within half of what it can do. */
    String loads(ServoAnswer servos) {
        Columns columns = columns("surface", "stick", "holds", "most", "share", "half", "choose");
        for (SurfaceLoad load : servos.loads()) {
            columns.row(row(load));
        }
        return servos.loads().isEmpty() ? "" : indented(columns);
    }

    /** Surfaces whose linkage was not given. */
    List<String> assumed(ServoAnswer servos) {
        return servos.loads().stream()
                .filter(SurfaceLoad::assumedLinkage)
                .map(SurfaceLoad::surface)
                .toList();
    }

    /** The fastest speed at which loads were looked at. */
    Optional<String> fastest(ServoAnswer servos) {
        return servos.loads().stream()
                .flatMap(load -> load.overSpeed().stream())
                .map(LoadPoint::speed)
                .max(Double::compare)
                .map(figures::speed);
    }

    private List<String> row(SurfaceLoad load) {
        Optional<Headline.Known> now = Headlines.known(load.comingIn());
        String stick = load.overSpeed().stream()
                .map(LoadPoint::stick)
                .filter(s -> !s.isEmpty())
                .findFirst()
                .orElse("-");
        double most = load.overSpeed().stream()
                .flatMap(p -> p.torque().stream())
                .max(Double::compare)
                .orElse(0.0);
        Optional<String> share = now.flatMap(n -> load.rating().map(r -> figures.share(n.value() / r)));
        return List.of(
                page.shown(load.surface()),
                page.shown(stick),
                now.map(n -> torque(n.value())).orElse(words.say("fly.servo.locked")),
                now.map(n -> torque(n.high())).orElse(""),
                share.orElse("-"),
                load.halfRatingAt().map(figures::speed).orElse("-"),
                load.rating().isPresent() || most == 0 ? "-" : torque(2 * most));
    }

    /** A line a surface and stick that move it from neutral. */
    String positions(ServoAnswer servos) {
        Columns columns = columns("surface", "stick", "side", "angle", "edge", "servo", "swing", "remark");
        List<Position> moved =
                servos.positions().stream().filter(p -> p.angle() != 0).toList();
        for (Position p : moved) {
            columns.row(List.of(
                    page.shown(p.surface()),
                    p.stick().isEmpty() ? "-" : page.shown(p.stick()),
                    side(p.side()),
                    figures.deflection(p.angle()),
                    figures.edge(p.angle(), new EdgeThrow(p.chord())),
                    p.servo().map(s -> figures.degrees(Math.abs(s))).orElse("-"),
                    p.swingShare().map(s -> figures.share(Math.abs(s))).orElse("-"),
                    remark(p)));
        }
        return moved.isEmpty() ? "" : indented(columns);
    }

    private Columns columns(String... keys) {
        return new Columns(
                Stream.of(keys).map(key -> words.say("fly.servo.column." + key)).toList(), 0);
    }

    private String indented(Columns columns) {
        return columns.render(page).lines().map(line -> "  " + line + "\n").collect(Collectors.joining());
    }

    private String side(Side side) {
        return switch (side) {
            case LEFT -> words.say("fly.roll.left");
            case RIGHT -> words.say("fly.roll.right");
            case BOTH -> words.say("fly.servo.both");
        };
    }

    private String remark(Position p) {
        return switch (p.reach()) {
            case LOCKED -> words.say("fly.servo.locked");
            case BEYOND_SWING -> words.say("fly.servo.beyond");
            case SLACKENING -> words.say("fly.servo.slackening");
            case FREE -> p.atItsStop() ? words.say("row.surface.stop") : "";
        };
    }

    private String torque(double torque) {
        return printer.print(torque, Dimension.TORQUE);
    }
}
