package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;
import throwline.section.LeaveOneOut.Figure;
import throwline.section.LeaveOneOut.Miss;
import throwline.section.LeaveOneOut.Place;

/** Airfoils that stand in for others, tried on those that were measured. */
class LikenessTest {

    private static final double[] REYNOLDS = {100_000, 200_000, 300_000};
    private static final double[] LIFTS = {0.2, 0.5, 0.8};

    private final PackedAirfoils library = new PackedAirfoils();
    private final MeasuredSections sections = new MeasuredSections();

    private List<Airfoil> measured() {
        return library.names().stream()
                // The second Clark Y is part of the first.
                .filter(name -> !name.equals("clarky-b"))
                .flatMap(name -> library.find(new AirfoilName(name)).stream())
                .toList();
    }

    /** Every library airfoil as if only its thickness, camber and moment were known, against its own polars. */
    private Map<Figure, List<Miss>> study() {
        Map<Figure, List<Miss>> misses = new EnumMap<>(Figure.class);
        for (Figure figure : Figure.values()) {
            misses.put(figure, new ArrayList<>());
        }
        List<Airfoil> all = measured();
        for (Airfoil airfoil : all) {
            boolean forModels = airfoil.runs().stream()
                    .anyMatch(run -> run.kind() == PolarRun.Kind.DRAG && run.reynolds() < 150_000);
            List<Airfoil> others =
                    all.stream().filter(other -> !other.equals(airfoil)).toList();
            Likeness likeness =
                    Likeness.ordinary(airfoil.thickness(), airfoil.camber()).withMoment(airfoil.nominalMoment());
            if (forModels) {
                likeness.among(others, "stand-in", "").ifPresent(other -> compare(airfoil, other, misses));
            }
        }
        return misses;
    }

    private void compare(Airfoil airfoil, Airfoil standIn, Map<Figure, List<Miss>> misses) {
        for (double reynolds : REYNOLDS) {
            SectionCurve own = sections.curve(SectionPlace.of(airfoil), SurfaceState.none(), reynolds);
            SectionCurve lent = sections.curve(SectionPlace.of(standIn), SurfaceState.none(), reynolds);
            add(misses, airfoil, reynolds, Figure.MAX_LIFT, own.maxLift(), lent.maxLift());
            add(misses, airfoil, reynolds, Figure.STALL_ANGLE, degrees(own.stallAngle()), degrees(lent.stallAngle()));
            add(
                    misses,
                    airfoil,
                    reynolds,
                    Figure.ZERO_LIFT_ANGLE,
                    degrees(own.zeroLiftAngle()),
                    degrees(lent.zeroLiftAngle()));
            for (double lift : LIFTS) {
                if (lift < 0.9 * Math.min(own.maxLift(), lent.maxLift())) {
                    add(
                            misses,
                            airfoil,
                            reynolds,
                            Figure.DRAG,
                            own.drag(LeaveOneOut.angleOf(own, lift)),
                            lent.drag(LeaveOneOut.angleOf(lent, lift)));
                }
            }
        }
    }

    private static double degrees(double angle) {
        return Math.toDegrees(angle);
    }

    private static void add(
            Map<Figure, List<Miss>> misses, Airfoil airfoil, double reynolds, Figure figure, double own, double lent) {
        misses.computeIfAbsent(figure, f -> new ArrayList<>())
                .add(new Miss(airfoil.name(), reynolds, Place.INSIDE, figure, own, lent));
    }

    /** The band of a stand-in is what this study finds, rounded. */
    @Test
    void bandsAreThoseOfTheStudy() {
        Map<Figure, List<Miss>> misses = study();
        SectionBands.Band band = SectionBands.load().of(Basis.LIKENESS, 200_000);
        assertThat(band.maxLift()).isCloseTo(found(misses, Figure.MAX_LIFT), within(0.02));
        assertThat(degrees(band.stallAngle())).isCloseTo(found(misses, Figure.STALL_ANGLE), within(0.5));
        assertThat(degrees(band.zeroLiftAngle())).isCloseTo(found(misses, Figure.ZERO_LIFT_ANGLE), within(0.15));
        assertThat(band.drag()).isCloseTo(found(misses, Figure.DRAG), within(0.05));
    }

    private static double found(Map<Figure, List<Miss>> misses, Figure figure) {
        List<Miss> of = misses.getOrDefault(figure, List.of());
        assertThat(of).hasSizeGreaterThan(60);
        return LeaveOneOut.quantile(of, 0.9);
    }

    /** A plate stands in for a plate only, and a symmetric airfoil for a symmetric one. */
    @Test
    void likeForLike() {
        assertThat(Likeness.ordinary(0.025, 0)
                        .among(measured(), "slab", "")
                        .orElseThrow()
                        .likeness())
                .contains("flatplate");
        Airfoil tail = Likeness.ordinary(0.08, 0).among(measured(), "tail", "").orElseThrow();
        assertThat(tail.likeness()).contains("naca0009");
        SectionCurve curve = sections.curve(SectionPlace.of(tail), SurfaceState.none(), 100_000);
        assertThat(degrees(curve.zeroLiftAngle())).isCloseTo(0, within(0.05));
    }
}
