package throwline.report.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import throwline.study.ServoAnswer.Position;
import throwline.study.SetUpResult;

/**
 * Move of one surface that is set on the bench: to where it stands in a set-up, or to where full stick takes it.
 *
 * @param setUps names of the set-ups in which it is this move
 * @param stick name of the stick; empty without one
 * @param sides where the surface then stands: one entry where left and right are alike, else left and right
 */
record BenchMove(List<String> setUps, String stick, List<Position> sides) {

    /** Less than this is not seen on paper, rad. */
    private static final double UNSEEN = Math.toRadians(0.05);

    BenchMove {
        setUps = List.copyOf(setUps);
        sides = List.copyOf(sides);
    }

    String surface() {
        return sides.get(0).surface();
    }

    /** Surfaces that do not stand at neutral in a set-up. */
    static List<BenchMove> stands(SetUpResult result) {
        return lines(result).stream()
                .filter(move -> move.stick().isEmpty() && move.movesFrom(0))
                .toList();
    }

    /** What full stick moves, set-ups with the same throws together. */
    static List<BenchMove> sticks(List<SetUpResult> results) {
        List<BenchMove> all = new ArrayList<>();
        for (SetUpResult result : results) {
            List<BenchMove> lines = lines(result);
            for (BenchMove move : lines) {
                double still = lines.stream()
                        .filter(m -> m.stick().isEmpty() && m.surface().equals(move.surface()))
                        .mapToDouble(m -> m.sides().get(0).angle())
                        .findFirst()
                        .orElse(0);
                if (!move.stick().isEmpty() && move.movesFrom(still)) {
                    add(all, move);
                }
            }
        }
        List<String> order = all.stream().map(BenchMove::stick).distinct().toList();
        all.sort(Comparator.comparingInt(move -> order.indexOf(move.stick())));
        return all;
    }

    private static void add(List<BenchMove> all, BenchMove move) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).isLike(move)) {
                List<String> setUps = new ArrayList<>(all.get(i).setUps());
                setUps.addAll(move.setUps());
                all.set(i, new BenchMove(setUps, move.stick(), move.sides()));
                return;
            }
        }
        all.add(move);
    }

    private boolean isLike(BenchMove other) {
        boolean same =
                stick.equals(other.stick) && surface().equals(other.surface()) && sides.size() == other.sides.size();
        for (int i = 0; same && i < sides.size(); i++) {
            same = Math.abs(sides.get(i).angle() - other.sides.get(i).angle()) < 1e-9;
        }
        return same;
    }

    private boolean movesFrom(double from) {
        return sides.stream().anyMatch(p -> isSeen(p.angle() - from));
    }

    /** True where an angle, rad, is told from neutral on paper. */
    static boolean isSeen(double angle) {
        return Math.abs(angle) > UNSEEN;
    }

    private static List<BenchMove> lines(SetUpResult result) {
        Map<String, List<Position>> lines = new LinkedHashMap<>();
        for (Position p : result.servos().positions()) {
            lines.computeIfAbsent(p.surface() + "\t" + p.stick(), key -> new ArrayList<>())
                    .add(p);
        }
        return lines.values().stream()
                .map(sides -> new BenchMove(
                        List.of(result.setUp().name()), sides.get(0).stick(), sides))
                .toList();
    }
}
