package throwline.window.sketch;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import throwline.model.AirfoilName;
import throwline.model.Model;
import throwline.model.Servo;
import throwline.model.Stick;
import throwline.model.WingSection;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.window.session.Movable;

/** The table of what the values of a model file measure: for a row of the table of keys, the drawing that points at it. */
public final class MeasuredKeys {

    private final Map<String, Function<Asked, Optional<Sketch>>> table = Map.ofEntries(
            entry("packs.*.balance", a -> a.above().balance(a.name())),
            entry("wing.height", a -> Optional.of(a.side().wingHeight())),
            entry("wing.incidence", a -> Optional.of(a.side().wingIncidence())),
            entry("wing.dihedral", a -> Optional.of(a.ahead().dihedral())),
            entry("wing.sections[].at", a -> a.above().station(a.index(), FromAbove.Station.AT)),
            entry("wing.sections[].chord", a -> a.above().station(a.index(), FromAbove.Station.CHORD)),
            entry("wing.sections[].set back", a -> a.above().station(a.index(), FromAbove.Station.SET_BACK)),
            entry("wing.sections[].washout", Asked::washout),
            entry("wing.surfaces.*.from", a -> a.above().end(a.name(), false)),
            entry("wing.surfaces.*.to", a -> a.above().end(a.name(), true)),
            entry("wing.surfaces.*.chord", a -> a.above().surfaceChord(a.name())),
            entry("wing.surfaces.*.travel", a -> a.travel(a.name())),
            entry("tail.span", a -> Optional.of(a.above().tailSpan())),
            entry("tail.chord", a -> Optional.of(a.above().tailChord())),
            entry("tail.arm", a -> Optional.of(a.above().tailArm())),
            entry("tail.height", a -> Optional.of(a.side().tailHeight())),
            entry("tail.incidence", a -> Optional.of(a.side().tailIncidence())),
            entry("tail.fins", a -> Optional.of(a.side().fins())),
            entry("tail.elevator.chord", a -> Optional.of(a.above().elevatorChord())),
            entry("tail.elevator.pivot", a -> Optional.of(a.above().pivot())),
            entry("tail.elevator.travel", a -> a.travel(Servo.ELEVATOR)),
            entry("tail.elevator.cruise", a -> a.travel(Servo.ELEVATOR)),
            entry("body.length", a -> Optional.of(a.above().bodyLength())),
            entry("body.width", a -> Optional.of(a.above().bodyWidth())),
            entry("body.height", a -> Optional.of(a.side().bodyHeight())),
            entry("body.nose", a -> Optional.of(a.above().nose())),
            entry("wheels.diameter", a -> a.side().wheelDiameter()),
            entry("wheels.width", a -> a.ahead().wheelWidth()),
            entry("wheels.leg length", a -> a.ahead().legLength()),
            entry("wheels.leg width", a -> a.ahead().legWidth()),
            entry("propeller.diameter", a -> a.above().propeller()),
            entry("propeller.height", a -> a.side().propellerHeight()),
            entry("propeller.down thrust", a -> a.side().downThrust()),
            entry("servos.*.arm", a -> a.linkage().map(OfLinkage::arm)),
            entry("servos.*.horn", a -> a.linkage().map(OfLinkage::horn)),
            entry("servos.*.rod", a -> a.linkage().map(OfLinkage::rod)),
            entry("servos.*.swing", a -> a.linkage().map(OfLinkage::swing)),
            entry("servos.*.lean", a -> a.linkage().map(OfLinkage::lean)),
            entry("servos.*.offset", a -> a.linkage().map(OfLinkage::offset)),
            entry("servos.*.give", a -> a.linkage().map(OfLinkage::give)),
            entry("servos.*.play", Asked::play),
            entry("set-ups.*.*", Asked::stands),
            entry("sticks.*.*", Asked::adds));

    /** The rows that it has. */
    public Set<String> rows() {
        return table.keySet();
    }

    /**
     * The drawing that points at a value; empty where the value measures nothing that can be drawn, or the model lacks it.
     *
     * @param row in the table of keys
     * @param path of the value in the file
     * @param model that is drawn
     * @param airfoils that it names
     */
    public Optional<Sketch> of(String row, List<String> path, Model model, AirfoilLibrary airfoils) {
        return Optional.ofNullable(table.get(row)).flatMap(view -> view.apply(new Asked(model, airfoils, path)));
    }

    /** A model from above, where nothing is pointed at. */
    public Sketch plain(Model model) {
        return new FromAbove(model).with();
    }

    /** A value that is asked for. */
    private record Asked(Model model, AirfoilLibrary airfoils, List<String> path) {

        FromAbove above() {
            return new FromAbove(model);
        }

        FromAhead ahead() {
            return new FromAhead(model);
        }

        FromSide side() {
            return new FromSide(
                    model,
                    airfoil(model.wing().sections().get(0).airfoil()),
                    airfoil(model.tail().airfoil()));
        }

        private Airfoil airfoil(AirfoilName name) {
            return airfoils.find(name).orElseThrow(() -> new IllegalStateException("no airfoil " + name.text()));
        }

        /** The name of the owner's choice that it stands under. */
        String name() {
            return path.get(path.get(0).equals("wing") ? 2 : 1);
        }

        /** The entry of a list that it stands in, from 0. */
        int index() {
            return Integer.parseInt(path.get(2).replaceAll("\\D", "")) - 1;
        }

        private String last() {
            return path.get(path.size() - 1);
        }

        private Optional<Movable> movable(String name) {
            return Movable.of(model).stream()
                    .filter(each -> each.name().equals(name))
                    .findFirst();
        }

        private Optional<OfSection> section(String name) {
            boolean tail = name.equals(Servo.ELEVATOR);
            AirfoilName airfoil = tail
                    ? model.tail().airfoil()
                    : model.wing().sections().get(0).airfoil();
            boolean whole = tail && model.tail().elevator().isAllMoving();
            return movable(name).map(movable -> new OfSection(airfoil(airfoil), movable, whole));
        }

        Optional<Sketch> travel(String name) {
            return movable(name).flatMap(m -> section(name).map(section -> section.at(List.of(-m.up(), m.down()))));
        }

        Optional<Sketch> washout() {
            List<WingSection> sections = model.wing().sections();
            return sections.stream()
                    .skip(index())
                    .findFirst()
                    .map(section -> new OfStation(
                                    sections.get(0), airfoil(sections.get(0).airfoil()), airfoil(section.airfoil()))
                            .washout(section));
        }

        Optional<OfLinkage> linkage() {
            return movable(name()).map(m -> new OfLinkage(model.servo(name()), m.chord()));
        }

        Optional<Sketch> play() {
            return section(name())
                    .map(section -> section.play(model.servo(name()).play()));
        }

        Optional<Sketch> stands() {
            return model.setUps().stream()
                    .filter(setUp -> setUp.name().equals(name()))
                    .findFirst()
                    .flatMap(setUp -> section(last())
                            .map(section -> section.at(List.of(
                                    last().equals(Servo.ELEVATOR) ? setUp.elevator() : setUp.deflection(last())))));
        }

        Optional<Sketch> adds() {
            return model.sticks().stream()
                    .filter(stick -> stick.name().equals(name()))
                    .findFirst()
                    .flatMap(stick -> section(last()).map(section -> section.at(added(stick))));
        }

        private List<Double> added(Stick stick) {
            if (stick instanceof Stick.Roll roll) {
                Stick.Throws full = roll.throwsBySurface().getOrDefault(last(), new Stick.Throws(0, 0));
                return List.of(-full.up(), full.down());
            }
            Stick.Pull pull = (Stick.Pull) stick;
            return List.of(
                    last().equals(Servo.ELEVATOR)
                            ? pull.elevator()
                            : pull.deflections().getOrDefault(last(), 0.0));
        }
    }
}
