package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.flight.Airframe;
import throwline.flight.Flight;
import throwline.flight.GroundHeights;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;

/**
 * "What does it do if I move this?": one set-up after another of a model whose rest stays, in two steps, the numbers that
 * are found at once before those that take longer. What all set-ups have in common is made ready once. A number is that of
 * a {@link ComparisonStudy} of the same model. One thread at a time.
 */
public final class HandStudy {

    private final ComparisonStudy study;
    private final AirfoilLibrary airfoils;
    private final Bands bands;
    private final Airframe airframe;
    private final GroundHeights ladder;
    private final Pack pack;
    private final InputUncertainties unknowns;
    private Optional<Reference> reference = Optional.empty();

    /**
     * Makes a model ready.
     *
     * @param model the model; its set-ups do not count
     * @param airfoils where its airfoils are found; every name of the model must be there
     * @param pack what it carries
     * @param sections makes section curves
     * @param bands the bands of headline numbers
     */
    public HandStudy(Model model, AirfoilLibrary airfoils, Pack pack, SectionAerodynamics sections, Bands bands) {
        study = new ComparisonStudy(sections, bands);
        this.bands = bands;
        this.airfoils = airfoils;
        this.pack = pack;
        Model rigged =
                new CruiseTrimStudy(sections, bands).rigged(model, airfoils).model();
        airframe = new Airframe(rigged, airfoils, sections);
        ladder = new GroundHeights(airframe);
        unknowns = new InputUncertainties(rigged, airfoils);
    }

    private record Reference(SetUp setUp, ComparisonStudy.Column column) {}

    /** Density of the air at the field, kg/m^3. */
    public double density() {
        return airframe.air().density();
    }

    /** True where the bands of steady flight are wider than {@link #steady} has them: something large is not known. */
    public boolean bandsComeLater() {
        return !unknowns.large(airframe.model().reference()).isEmpty();
    }

    /**
     * What a set-up does in steady flight; other numbers are unknown with the reason {@link SetUpResult#WORKING}.
     *
     * @param setUp the set-up
     * @param setUps those of the model; it stands in place of the one of its name
     */
    public SetUpResult steady(SetUp setUp, List<SetUp> setUps) {
        return column(setUp, setUps).steady().get(0);
    }

    /**
     * All that a set-up does.
     *
     * @param setUp the set-up
     * @param setUps those of the model; it stands in place of the one of its name
     */
    public SetUpResult full(SetUp setUp, List<SetUp> setUps) {
        return column(setUp, setUps).results(airfoils, ladder).get(0);
    }

    /**
     * A set-up at a throttle and its approach speed.
     *
     * @param throttle duty of the controller, more than 0, at most 1
     * @return empty where the model has no motor or no such flight is found
     */
    public Optional<ThrottleAnswer> powered(SetUp setUp, List<SetUp> setUps, double throttle) {
        List<SetUp> all = new ArrayList<>();
        setUps.forEach(each -> all.add(each.name().equals(setUp.name()) ? setUp : each));
        Airframe moved = airframe.with(all);
        return ThrottleAnswer.of(new Flight(moved, setUp), setUp, pack, bands, throttle);
    }

    private ComparisonStudy.Column column(SetUp setUp, List<SetUp> setUps) {
        List<SetUp> all = new ArrayList<>();
        setUps.forEach(each -> all.add(each.name().equals(setUp.name()) ? setUp : each));
        Airframe moved = airframe.with(all);
        SetUp wanted = moved.model().reference();
        ComparisonStudy.Column column = study.column(moved, setUp, List.of(pack));
        column.compareWith(wanted.equals(setUp) ? column : reference(moved, wanted));
        return column;
    }

    /** The reference set-up, flown once. */
    private ComparisonStudy.Column reference(Airframe moved, SetUp wanted) {
        if (reference.filter(r -> r.setUp().equals(wanted)).isEmpty()) {
            reference = Optional.of(new Reference(wanted, study.column(moved, wanted, List.of(pack))));
        }
        return reference.orElseThrow().column();
    }
}
