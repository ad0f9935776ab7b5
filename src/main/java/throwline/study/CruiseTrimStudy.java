package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.flight.Airframe;
import throwline.flight.Attitude;
import throwline.flight.Flight;
import throwline.flight.PoweredFlight;
import throwline.flight.PoweredPoint;
import throwline.flight.Stall;
import throwline.model.CruiseTrim;
import throwline.model.Model;
import throwline.model.Motor;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.power.Drive;
import throwline.power.FittedDrive;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;
import throwline.study.FlyResult.Sensitivity;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/**
 * The incidence of the tail out of where the elevator stands in cruise: the one angle at which the balanced model flies there
 * with the elevator where it was read (methods manual 7.8). The elevator in trim falls steadily as the tail is turned nose
 * up, so that there is one at most.
 */
public final class CruiseTrimStudy {

    /** How far off the speed of a cruise may be, share (common practice, no source). */
    private static final double SPEED = 0.1;

    private final SectionAerodynamics sections;
    private final Bands bands;

    /**
     * @param sections makes section curves
     * @param bands the bands of headline numbers
     */
    public CruiseTrimStudy(SectionAerodynamics sections, Bands bands) {
        this.sections = sections;
        this.bands = bands;
    }

    /**
     * A model whose tail stands at an angle.
     *
     * @param model ready to fly
     * @param notes where the angle comes from, or why it could not be found
     */
    public record Rigged(Model model, List<Message> notes) {
        public Rigged {
            notes = List.copyOf(notes);
        }
    }

    /**
     * The model with the tail at the angle that the elevator in cruise tells; as it is where nothing was read.
     *
     * @param model the model
     * @param airfoils where its airfoils are found; every name of the model must be there
     */
    public Rigged rigged(Model model, AirfoilLibrary airfoils) {
        return model.tail()
                .cruise()
                .map(read -> new Reading(model, airfoils, read).rigged())
                .orElseGet(() -> new Rigged(model, List.of()));
    }

    /** A reading of the elevator in cruise, with the flight in which it was read. */
    private final class Reading {

        private final Model model;
        private final AirfoilLibrary airfoils;
        private final CruiseTrim read;
        private final Pack pack;
        private final SetUp setUp;
        private final Flight flight;

        Reading(Model model, AirfoilLibrary airfoils, CruiseTrim read) {
            this.model = model;
            this.airfoils = airfoils;
            this.read = read;
            pack = model.packs().get(0);
            setUp = model.reference();
            flight = new Flight(new Airframe(model, airfoils, sections), setUp);
        }

        /** The flight in which the elevator was read; without a drive the throttle is closed. */
        private record Cruise(Stall stall, double speed, Optional<Drive> drive, double throttle) {
            Cruise at(double other) {
                return new Cruise(stall, other, drive, throttle);
            }

            Cruise closed() {
                return new Cruise(stall, speed, Optional.empty(), 0);
            }
        }

        Rigged rigged() {
            Optional<Cruise> cruise = flight.stall(pack).flatMap(this::cruise);
            if (cruise.isEmpty()) {
                return unknown("note.cruise-trim.not-flown");
            }
            TailAngle found = TailAngle.of(turned -> elevator(cruise.get(), turned), read.elevator());
            return found.angle()
                    .map(turned -> rigged(cruise.get(), turned))
                    .orElseGet(() -> unknown(found.lost() ? "note.cruise-trim.not-flown" : "note.cruise-trim.none"));
        }

        private Rigged unknown(String why) {
            double angle = model.tail().incidence();
            return new Rigged(
                    model.with(model.tail().rigged(angle, model.tail().incidenceDoubt())),
                    List.of(Message.of(why, new Quantity(TailAngle.FURTHEST, Dimension.ANGLE))));
        }

        private Optional<Cruise> cruise(Stall stall) {
            Optional<FittedDrive> fitted =
                    model.isPowered(pack) ? flight.airframe().drive(pack) : Optional.empty();
            if (fitted.isEmpty()) {
                return read.speed().isPresent()
                        ? Optional.of(new Cruise(stall, read.speed().getAsDouble(), Optional.empty(), 0))
                        : Optional.empty();
            }
            Drive drive = fitted.get().drive();
            PoweredFlight powered = new PoweredFlight(flight.airframe(), setUp, pack, drive, stall);
            double throttle = model.motor().map(Motor::cruise).orElse(Motor.USUAL_CRUISE);
            Optional<PoweredPoint> level =
                    read.speed().isPresent() ? powered.level(read.speed().getAsDouble()) : powered.fastest(throttle);
            return level.map(point -> new Cruise(
                    stall, point.speed(), Optional.of(drive), point.drive().throttle()));
        }

        /** Where the elevator stands with the tail turned by an angle, rad; empty where no such flight is found. */
        private Optional<Double> elevator(Cruise cruise, double turned) {
            Airframe frame = new Airframe(model.with(model.tail().turned(turned)), airfoils, sections);
            Optional<Attitude> steady = cruise.drive().isPresent()
                    ? new PoweredFlight(frame, setUp, pack, cruise.drive().get(), cruise.stall())
                            .steady(cruise.throttle(), cruise.speed())
                            .map(PoweredPoint::attitude)
                    : new Flight(frame, setUp)
                            .descent(pack, cruise.stall(), cruise.speed())
                            .steady();
            return steady.map(Attitude::elevator);
        }

        private Rigged rigged(Cruise cruise, double turned) {
            double angle = model.tail().incidence() + turned;
            double doubt = doubt(cruise, turned);
            boolean level = cruise.drive().isPresent();
            String up = level ? "note.cruise-trim.up" : "note.cruise-trim.up-closed";
            String down = level ? "note.cruise-trim.down" : "note.cruise-trim.down-closed";
            Message from = Message.of(
                    angle < 0 ? down : up,
                    new Quantity(Math.abs(angle), Dimension.ANGLE),
                    new Quantity(doubt, Dimension.ANGLE),
                    new Quantity(cruise.speed(), Dimension.SPEED));
            return new Rigged(model.with(model.tail().rigged(angle, doubt)), List.of(from));
        }

        /**
         * How far off that angle may be nine times out of ten, rad: the reading to a millimetre at the edge, the speed, and
         * what the motor does to the trim, each in degrees of elevator, over the elevator that a degree of the tail moves. Where
         * one of these is not known because its flight was not found, at least that of an unknown angle.
         */
        private double doubt(Cruise cruise, double turned) {
            double step = TailAngle.STEP / 4;
            Optional<Double> here = elevator(cruise, turned);
            List<Optional<Double>> errors = new ArrayList<>();
            errors.add(Optional.of(Sensitivity.EDGE / model.tail().throwChord()));
            errors.add(change(here, cruise.at((1 + SPEED) * cruise.speed()), turned)
                    .flatMap(faster -> change(here, cruise.at((1 - SPEED) * cruise.speed()), turned)
                            .map(slower -> Math.max(Math.abs(faster), Math.abs(slower)))));
            if (cruise.drive().isPresent()) {
                errors.add(change(here, cruise.closed(), turned)
                        .map(motor -> bands.around("throttleTrim", motor))
                        .map(motor -> motor.high() - motor.value()));
            }
            Optional<Double> perAngle = change(here, cruise, turned + step).map(change -> change / step);
            return TailAngle.doubt(perAngle, errors, model.tail().incidenceDoubt());
        }

        /** Change of the elevator to another flight, rad; empty where a flight is not found. */
        private Optional<Double> change(Optional<Double> here, Cruise other, double turned) {
            return here.flatMap(before -> elevator(other, turned).map(after -> after - before));
        }
    }
}
