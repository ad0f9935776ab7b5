package throwline.study;

import java.util.Optional;
import throwline.flight.SurfaceMove.Return;
import throwline.study.Handling.Move;
import throwline.study.Handling.Moves;
import throwline.study.Handling.Suggested;

/**
 * The rule for going to a set-up and back: how slowly the surfaces move, how fast and how high to be when they go back. Taken
 * from the model's own runs with one mix, the same wherever it is told.
 *
 * @param mix elevator that goes with the surfaces: the one in the model file or named by the person, else the one to start with
 * @param shortest time of the surfaces on the way out that keeps the load below 1.3, s; empty where none of those tried does
 * @param quickest the shortest time that was tried, s
 * @param slowest the longest, s
 * @param closeSpeed to go back no slower than this, m/s
 * @param comesBack how the path comes back from there
 * @param heightLost until then, m; empty where it never was steeper or does not come back
 */
public record MoveRule(
        Handling.Mix mix,
        Optional<Double> shortest,
        double quickest,
        double slowest,
        double closeSpeed,
        Return comesBack,
        Optional<Double> heightLost) {

    /** The mix to start with (PRACTICE, methods manual 17.2). */
    static final double START = 0.5;

    /** The rule behind these runs; empty where going back was not worked out. */
    public static Optional<MoveRule> of(Moves moves) {
        return moves.raising().stream()
                .filter(move -> move.mix().own())
                .findFirst()
                .or(() -> moves.raising().stream()
                        .filter(move -> move.mix().share() == START)
                        .findFirst())
                .map(move -> new MoveRule(
                        move.mix(),
                        shortest(moves, move),
                        moves.terms().quickest(),
                        moves.terms().slowest(),
                        moves.raiseSpeed(),
                        move.comesBack(),
                        move.heightLost()));
    }

    private static Optional<Double> shortest(Moves moves, Move move) {
        return moves.suggested().stream()
                .filter(each -> each.mix().equals(move.mix()))
                .findFirst()
                .flatMap(Suggested::time);
    }
}
