package throwline.liftingline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import throwline.model.Surface;
import throwline.model.Wing;
import throwline.model.WingSection;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.CurveFamily;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;

/**
 * Strips of a wing, each with its airfoil and surface. The wing is carried through the body as if the body were not
 * there, and so is the lift of the innermost surface as far as {@link CarryOver} says. Keeps the curves of sections
 * whose surface is at rest, which all set-ups share; safe for several threads.
 */
public final class WingStrips {

    private static final int NOTHING = -1;

    private final Wing wing;
    private final SpanGrid grid;
    private final SectionAerodynamics sections;
    private final List<SectionPlace> places = new ArrayList<>();
    private final List<Optional<Surface>> surfaces = new ArrayList<>();
    private final int[] surfaceNumbers;
    private final int[] carried;
    private final int[] twins;
    private final Map<Section, CurveFamily> atRest = new ConcurrentHashMap<>();

    /** A wing without a body; parameters as in {@link #WingStrips(Wing, CarryOver, AirfoilLibrary, SectionAerodynamics, int)}. */
    public WingStrips(Wing wing, AirfoilLibrary airfoils, SectionAerodynamics sections, int strips) {
        this(wing, CarryOver.none(), airfoils, sections, strips);
    }

    /**
     * Cuts a wing into strips.
     *
     * @param wing the wing
     * @param body carries on the lift of the innermost surface
     * @param airfoils where its airfoils are found; every name must be there
     * @param sections makes section curves
     * @param strips wanted number over the whole span
     */
    public WingStrips(Wing wing, CarryOver body, AirfoilLibrary airfoils, SectionAerodynamics sections, int strips) {
        this.wing = wing;
        this.sections = sections;
        OptionalInt number = beside(body);
        Optional<Surface> beside =
                number.isPresent() ? Optional.of(wing.surfaces().get(number.getAsInt())) : Optional.empty();
        double carriedOnTo = beside.map(s -> body.innerEnd(s.from())).orElse(0.0);
        double[] ends = DoubleStream.concat(
                        DoubleStream.of(carriedOnTo),
                        wing.surfaces().stream().flatMapToDouble(s -> DoubleStream.of(s.from(), s.to())))
                .toArray();
        grid = SpanGrid.of(new WingPlanform(wing), ends, strips);
        surfaceNumbers = new int[grid.size()];
        carried = new int[grid.size()];
        List<Airfoil> bySection = wing.sections().stream()
                .map(section -> airfoils.find(section.airfoil()).orElseThrow(() -> unknown(section)))
                .toList();
        for (int i = 0; i < grid.size(); i++) {
            double distance = Math.abs(grid.control(i));
            places.add(place(distance, bySection));
            int own = surfaceAt(distance);
            surfaceNumbers[i] = own;
            boolean carries = distance > carriedOnTo
                    && beside.filter(s -> distance < s.from()).isPresent();
            carried[i] = carries ? number.orElseThrow() : NOTHING;
            surfaces.add(
                    own < 0 ? Optional.empty() : Optional.of(wing.surfaces().get(own)));
        }
        twins = new int[grid.size()];
        for (int i = 0; i < grid.size(); i++) {
            twins[i] = firstTwin(i);
        }
    }

    /** The first strip, from the left, with the same airfoil, surface and chord; itself where there is none before. */
    private int firstTwin(int strip) {
        for (int k = 0; k < strip; k++) {
            if (surfaceNumbers[k] == surfaceNumbers[strip]
                    && carried[k] == carried[strip]
                    && grid.chord(k) == grid.chord(strip)
                    && places.get(k).equals(places.get(strip))) {
                return k;
            }
        }
        return strip;
    }

    private SectionPlace place(double distance, List<Airfoil> airfoils) {
        int last = wing.sections().size() - 1;
        int i = 1;
        while (i < last && distance > wing.sections().get(i).at()) {
            i++;
        }
        WingSection inner = wing.sections().get(i - 1);
        WingSection outer = wing.sections().get(i);
        double weight = (distance - inner.at()) / (outer.at() - inner.at());
        return new SectionPlace(
                airfoils.get(i - 1), airfoils.get(i), inner.airfoil().equals(outer.airfoil()) ? 0 : weight);
    }

    private static IllegalArgumentException unknown(WingSection section) {
        return new IllegalArgumentException("no airfoil " + section.airfoil().text());
    }

    /** The innermost surface that lies for the most part outside the body. */
    private OptionalInt beside(CarryOver body) {
        List<Surface> all = wing.surfaces();
        return IntStream.range(0, all.size())
                .filter(k -> (all.get(k).from() + all.get(k).to()) / 2 > body.halfWidth())
                .reduce((inner, k) -> all.get(k).from() < all.get(inner).from() ? k : inner);
    }

    private int surfaceAt(double distance) {
        for (int k = 0; k < wing.surfaces().size(); k++) {
            if (distance > wing.surfaces().get(k).from()
                    && distance < wing.surfaces().get(k).to()) {
                return k;
            }
        }
        return NOTHING;
    }

    /** The strips. */
    public SpanGrid grid() {
        return grid;
    }

    /** The surface on a strip, empty where there is none. */
    public Optional<Surface> surface(int strip) {
        return surfaces.get(strip);
    }

    /**
     * The section curves of the wing.
     *
     * @param deflection deflection of a surface, rad, by surface and side (-1 left, 1 right)
     * @param reynoldsPerMetre Reynolds number per metre of chord: speed over kinematic viscosity
     * @return one curve a strip, maximum lift blended across the surfaces' ends; strips that are alike share one object
     */
    public List<SectionCurve> curves(ToDoubleBiFunction<Surface, Integer> deflection, double reynoldsPerMetre) {
        return curves(deflection, section -> reynolds -> curve(section, reynolds), Map.of())
                .at(reynoldsPerMetre);
    }

    /** The curve of a section at a Reynolds number, made anew. */
    SectionCurve curve(Section section, double reynolds) {
        return sections.curve(section.place, section.state, reynolds);
    }

    /**
     * The section curves of the wing with its surfaces held, for a search over speeds.
     *
     * @param deflection deflection of a surface, rad, by surface and side (-1 left, 1 right)
     */
    public WingCurves curves(ToDoubleBiFunction<Surface, Integer> deflection) {
        return curves(deflection, new HashMap<>());
    }

    /**
     * The same with other deflections as well; sections that stand alike share what is made of them.
     *
     * @param deflection as in {@link #curves(ToDoubleBiFunction)}
     * @param others of this wing; used by the same thread
     */
    public WingCurves curves(ToDoubleBiFunction<Surface, Integer> deflection, WingCurves others) {
        return curves(deflection, others.made());
    }

    private WingCurves curves(ToDoubleBiFunction<Surface, Integer> deflection, Map<Section, CurveFamily> made) {
        return curves(
                deflection,
                section -> (section.state.deflection() == 0 ? atRest : made)
                        .computeIfAbsent(section, wanted -> sections.family(wanted.place, wanted.state)),
                made);
    }

    /** Curves of families that another keeps. */
    WingCurves curves(
            ToDoubleBiFunction<Surface, Integer> deflection,
            Function<Section, CurveFamily> families,
            Map<Section, CurveFamily> made) {
        int n = grid.size();
        double[] left = deflections(deflection, -1);
        double[] right = deflections(deflection, 1);
        double[] deflections = new double[n];
        int[] moved = new int[n];
        int[] alike = new int[n];
        List<CurveFamily> all = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            double[] side = grid.control(i) < 0 ? left : right;
            int own = surfaceNumbers[i];
            moved[i] = carried[i] != NOTHING && (own == NOTHING || side[own] == 0) ? carried[i] : own;
            deflections[i] = moved[i] == NOTHING ? 0 : side[moved[i]];
            alike[i] = twins[i];
            while (twins[alike[i]] != twins[i]
                    || moved[alike[i]] != moved[i]
                    || deflections[alike[i]] != deflections[i]) {
                alike[i]++;
            }
            all.add(alike[i] < i ? all.get(alike[i]) : family(i, moved[i], deflections[i], families));
        }
        return new WingCurves(grid, all, alike, surfaceNumbers, made);
    }

    private CurveFamily family(int strip, int moved, double deflection, Function<Section, CurveFamily> families) {
        SectionPlace place = places.get(strip);
        if (moved == surfaceNumbers[strip]) {
            return families.apply(new Section(place, state(surfaces.get(strip), deflection)));
        }
        CurveFamily rest = families.apply(new Section(place, SurfaceState.none()));
        if (deflection == 0) {
            return rest;
        }
        CurveFamily beside = families.apply(
                new Section(place, state(Optional.of(wing.surfaces().get(moved)), deflection)));
        return reynolds -> new CarriedCurve(rest.at(reynolds), beside.at(reynolds), CarryOver.SHARE);
    }

    private double[] deflections(ToDoubleBiFunction<Surface, Integer> deflection, int side) {
        return wing.surfaces().stream()
                .mapToDouble(surface -> deflection.applyAsDouble(surface, side) + 0.0)
                .toArray();
    }

    private static SurfaceState state(Optional<Surface> surface, double deflection) {
        return surface.map(s -> new SurfaceState(deflection, s.chordFraction(), s.hinge()))
                .orElseGet(SurfaceState::none);
    }

    /** A section of the wing, wherever it lies; equality written out as that of {@link SectionPlace}. */
    record Section(SectionPlace place, SurfaceState state) {

        @Override
        public boolean equals(Object other) {
            return other instanceof Section section && place.equals(section.place) && state.equals(section.state);
        }

        @Override
        public int hashCode() {
            return 31 * place.hashCode() + state.hashCode();
        }
    }
}
