package throwline.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.model.Elevator;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Propeller;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.model.Wing;
import throwline.model.WingSection;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/**
 * Holds the measures of a model against what is usual for its kind, so that typing mistakes are seen: proportions, and the
 * load of its motor.
 */
public final class ModelReview {

    /** Roll that should be left to a surface that an airbrake raises: common practice, no source. */
    private static final double ROLL_LEFT = Math.toRadians(8);

    private static final double ROUNDING = Math.toRadians(0.05);

    private final Model model;
    private final boolean glider;
    private final UsualRanges usual = UsualRanges.load();
    private final List<Message> notes = new ArrayList<>();

    private ModelReview(Model model) {
        this.model = model;
        this.glider = model.wheels().isEmpty()
                && model.propeller()
                        .filter(p -> p.shut() != Propeller.Shut.FOLDED)
                        .isEmpty();
    }

    /** What is unusual, in the order of the model file; empty where nothing is. */
    public static List<Message> of(Model model) {
        ModelReview review = new ModelReview(model);
        review.packs();
        review.wing();
        review.surfaces();
        review.tail();
        review.rest();
        review.setUps();
        review.sticks();
        review.notes.addAll(DriveReview.of(model, model.packs()));
        return List.copyOf(review.notes);
    }

    private void packs() {
        Wing wing = model.wing();
        double area = wing.area();
        for (Pack pack : model.packs()) {
            double balance = (pack.balance() - wing.meanLeadingEdge()) / wing.meanAerodynamicChord();
            hold("balance", balance, Dimension.FRACTION, pack.name());
            double loading = pack.mass() / area;
            if (hold("loading", loading, Dimension.WING_LOADING, pack.name())) {
                hold("size-loading", loading / Math.sqrt(area), Dimension.NUMBER, pack.name());
            }
        }
        double lightest = model.packs().stream().mapToDouble(Pack::mass).min().orElseThrow();
        double heaviest = model.packs().stream().mapToDouble(Pack::mass).max().orElseThrow();
        hold("pack-weight", heaviest / lightest, Dimension.NUMBER);
    }

    private void wing() {
        Wing wing = model.wing();
        WingSection middle = wing.sections().get(0);
        WingSection tip = wing.sections().get(wing.sections().size() - 1);
        hold("aspect-ratio", wing.span() * wing.span() / wing.area(), Dimension.NUMBER);
        hold("taper", tip.chord() / middle.chord(), Dimension.FRACTION);
        hold("wing-height", wing.height() / model.body().height(), Dimension.FRACTION);
        holdAngle("dihedral", wing.dihedral());
        holdAngle("washout", tip.washout());
        double back = tip.setBack() + (tip.chord() - middle.chord()) / 4;
        holdAngle("sweep", Math.atan2(back, tip.at()));
    }

    private void surfaces() {
        for (Surface surface : model.wing().surfaces()) {
            hold("surface-chord", surface.chordFraction(), Dimension.FRACTION, surface.name());
            double width = surface.to() - surface.from();
            double chord = model.wing().chordAt((surface.from() + surface.to()) / 2);
            if (width < chord / 2) {
                notes.add(Message.of("note.unusual.surface-width", surface.name(), length(width)));
            }
        }
    }

    private void tail() {
        Wing wing = model.wing();
        double chord = wing.meanAerodynamicChord();
        double lever = model.tail().arm() + model.tail().chord() / 4 - wing.meanLeadingEdge() - chord / 4;
        Elevator elevator = model.tail().elevator();
        hold("tail-volume", model.tail().area() * lever / (wing.area() * chord), Dimension.NUMBER);
        hold("tail-arm", model.tail().arm() / chord, Dimension.NUMBER);
        if (elevator.chordFraction() < 1) {
            hold("elevator-chord", elevator.chordFraction(), Dimension.FRACTION);
        }
        if (elevator.isAllMoving() && elevator.pivot() > Elevator.USUAL_PIVOT) {
            notes.add(Message.of("note.unusual.pivot", new Quantity(elevator.pivot(), Dimension.FRACTION)));
        }
        holdAngle("rigging", wing.incidence() - model.tail().incidence());
    }

    private void rest() {
        double span = model.wing().span();
        double length = model.body().length();
        hold("body-length", length / span, Dimension.FRACTION);
        hold("body-width", model.body().width() / length, Dimension.FRACTION);
        double tailEnd = model.body().nose() + model.tail().arm() + model.tail().chord();
        if (length < model.tail().arm()) {
            notes.add(Message.of(
                    "note.unusual.body-short",
                    length(length),
                    length(model.tail().arm())));
        } else if (length > 1.15 * tailEnd) {
            notes.add(Message.of("note.unusual.body-long", length(length), length(tailEnd)));
        }
        model.propeller().ifPresent(p -> {
            hold("propeller-diameter", p.diameter() / span, Dimension.FRACTION);
            hold("propeller-pitch", p.pitch() / p.diameter(), Dimension.NUMBER);
        });
        model.wheels().ifPresent(w -> hold("wheel-diameter", w.diameter() / span, Dimension.FRACTION));
    }

    private void setUps() {
        for (SetUp setUp : model.setUps()) {
            boolean brake = setUp.deflections().values().stream().anyMatch(d -> d > 0);
            for (Surface surface : model.wing().surfaces()) {
                double up = -setUp.deflection(surface.name());
                if (!brake || up <= 0 || !rolls(surface, setUp)) {
                    continue;
                }
                if (up > surface.travelUp() / 2 + ROUNDING) {
                    notes.add(Message.of(
                            "note.unusual.raised", setUp.name(), surface.name(), angle(up), angle(surface.travelUp())));
                } else if (surface.travelUp() - up < ROLL_LEFT) {
                    notes.add(Message.of(
                            "note.unusual.roll-left", setUp.name(), surface.name(), angle(surface.travelUp() - up)));
                }
            }
        }
    }

    private boolean rolls(Surface surface, SetUp setUp) {
        return model.sticks().stream()
                .anyMatch(s -> s instanceof Stick.Roll roll
                        && roll.worksIn(setUp)
                        && roll.throwsBySurface().containsKey(surface.name()));
    }

    private void sticks() {
        for (Stick stick : model.sticks()) {
            if (stick instanceof Stick.Roll roll) {
                roll.throwsBySurface().forEach((surface, both) -> {
                    beyondTravel(roll, surface, both.up(), both.down());
                    if (both.down() > both.up() + ROUNDING) {
                        notes.add(Message.of(
                                "note.unusual.more-down", roll.name(), surface, angle(both.down()), angle(both.up())));
                    }
                });
            } else if (stick instanceof Stick.Pull pull) {
                pull.deflections()
                        .forEach((surface, d) -> beyondTravel(pull, surface, Math.max(0, -d), Math.max(0, d)));
                Optional<String> raised = pull.deflections().entrySet().stream()
                        .filter(e -> e.getValue() < 0 && pull.elevator() < 0)
                        .map(Map.Entry::getKey)
                        .min(Comparator.naturalOrder());
                raised.ifPresent(surface -> notes.add(Message.of("note.unusual.pull-up", pull.name(), surface)));
            }
        }
    }

    /** Where a surface stops before the stick has had its way, in which set-ups, and by how much at most. */
    private void beyondTravel(Stick stick, String name, double up, double down) {
        Surface surface = model.wing().surfaces().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
        for (boolean downwards : List.of(false, true)) {
            List<String> where = new ArrayList<>();
            double most = 0;
            for (SetUp setUp : model.setUps()) {
                double stands = setUp.deflection(name);
                double wanted = downwards ? stands + down : up - stands;
                double beyond = wanted - (downwards ? surface.travelDown() : surface.travelUp());
                if (stick.worksIn(setUp) && (downwards ? down : up) > 0 && beyond > ROUNDING) {
                    where.add(setUp.name());
                    most = Math.max(most, beyond);
                }
            }
            if (!where.isEmpty()) {
                notes.add(Message.of(
                        downwards ? "note.unusual.beyond-down" : "note.unusual.beyond-up",
                        stick.name(),
                        name,
                        angle(most),
                        String.join(", ", where)));
            }
        }
    }

    /** True where the value is usual; a note where it is not. */
    private boolean hold(String code, double value, Dimension dimension, String... about) {
        UsualRanges.Range range = usual.of(code, glider);
        boolean holds = range.holds(value);
        if (!holds) {
            List<Object> arguments = new ArrayList<>(List.of(
                    new Quantity(value, dimension),
                    new Quantity(range.least(), dimension),
                    new Quantity(range.most(), dimension)));
            arguments.addAll(List.of(about));
            notes.add(new Message("note.unusual." + code, arguments));
        }
        return holds;
    }

    private void holdAngle(String code, double radians) {
        UsualRanges.Range range = usual.of(code, glider);
        if (!range.holds(Math.toDegrees(radians))) {
            notes.add(Message.of(
                    "note.unusual." + code,
                    angle(radians),
                    angle(Math.toRadians(range.least())),
                    angle(Math.toRadians(range.most()))));
        }
    }

    private static Quantity angle(double radians) {
        return new Quantity(radians, Dimension.ANGLE);
    }

    private static Quantity length(double metres) {
        return new Quantity(metres, Dimension.LENGTH);
    }
}
