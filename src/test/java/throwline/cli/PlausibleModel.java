package throwline.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.SplittableRandom;
import throwline.input.PackedAirfoils;

/**
 * A model that could exist, made up from a seed (neighbouring seeds give models that are not alike): 1 to 3 m span, 1
 * to 8 kg, flaps and ailerons, a tail of usual size, sticks, perhaps servos, wind, an obstacle before the field (ranges:
 * common practice, no source). Written as a file in several ways that mean the same, and heavier or in thinner air.
 */
final class PlausibleModel {

    private static final List<String> AIRFOILS = new PackedAirfoils().names();

    private static final double INCH = 0.0254;
    private static final double POUND = 0.45359237;
    private static final double METRES_PER_MILE = 1609.344;
    private static final double SECONDS_PER_HOUR = 3600;

    private final long partsSeed;
    private final Random random;
    private final double span;
    private final double chord;
    private final double taper;
    private final double weight;
    private final double balance;

    PlausibleModel(long seed) {
        SplittableRandom mixed = new SplittableRandom(seed);
        random = new Random(mixed.nextLong());
        partsSeed = mixed.nextLong();
        span = between(1.0, 3.0);
        chord = span / between(5, 8);
        taper = between(0.5, 1);
        weight = Math.min(8, Math.max(1, between(3.5, 9) * span * chord * (1 + taper) / 2));
        balance = between(0.22, 0.32) * chord;
    }

    /** The file as most would write it. */
    String file() {
        return write(new Way(false, false, false, 0));
    }

    /** The same in inches and pounds. */
    String imperial() {
        return write(new Way(true, false, false, 0));
    }

    /** The same with other names for all parts, in another order. */
    String renamed() {
        return write(new Way(false, true, false, 0));
    }

    /** The same with a second pack, a tenth heavier. */
    String withHeavierPack() {
        return write(new Way(false, false, true, 0));
    }

    /** A line of an answer with the names of {@link #file}. */
    static String withFirstNames(String line) {
        return line.replace("zqa", "flaps")
                .replace("zqb", "ailerons")
                .replace("zqc", "clean")
                .replace("zqd", "landing")
                .replace("zqe", "full roll")
                .replace("zqf", "full up");
    }

    /** The same on a field so high above the sea, m. */
    String at(double height) {
        return write(new Way(false, false, false, height));
    }

    private record Way(boolean imperial, boolean renamed, boolean heavier, double height) {

        String length(double metres) {
            return imperial ? number(metres / INCH) + " in" : number(metres * 1000) + " mm";
        }

        String mass(double kilograms) {
            return imperial ? number(kilograms / POUND) + " lb" : number(kilograms) + " kg";
        }

        String speed(double metresPerSecond) {
            return imperial
                    ? number(metresPerSecond * SECONDS_PER_HOUR / METRES_PER_MILE) + " mph"
                    : number(metresPerSecond) + " m/s";
        }

        String name(String first, String other) {
            return renamed ? other : first;
        }

        List<String> ordered(String... lines) {
            List<String> all = new ArrayList<>(List.of(lines));
            if (renamed) {
                Collections.reverse(all);
            }
            return all;
        }
    }

    private String write(Way way) {
        random.setSeed(partsSeed);
        String airfoil = AIRFOILS.get(random.nextInt(AIRFOILS.size()));
        double tailArm = between(2.6, 3.3) * chord;
        String tail = "tail: {span: " + way.length(between(0.28, 0.36) * span) + ", chord: "
                + way.length(between(0.55, 0.7) * chord) + ", arm: " + way.length(tailArm)
                + ", elevator: {chord: " + number(between(30, 45)) + " %, travel: 25 deg}}\n";
        String wing = wing(way, airfoil);
        String packs = "packs:\n  light: {weight: " + way.mass(weight) + ", balance: " + way.length(balance) + "}\n"
                + (way.heavier
                        ? "  loaded: {weight: " + way.mass(1.1 * weight) + ", balance: " + way.length(balance) + "}\n"
                        : "");
        double down = between(10, 50);
        double up = random.nextBoolean() ? between(2, 12) : 0;
        String flaps = way.name("flaps", "zqa");
        String ailerons = way.name("ailerons", "zqb");
        String clean = way.name("clean", "zqc");
        String landing = String.join(
                ", ", way.ordered(flaps + ": " + number(down) + " deg down", ailerons + ": " + number(up) + " deg up"));
        String setUps = "set-ups:\n  " + clean + ": {}\n  " + way.name("landing", "zqd") + ": {" + landing + "}\n";
        String more = random.nextBoolean() ? "wheels: {diameter: " + way.length(0.08) + "}\n" : "";
        more += switch (random.nextInt(3)) {
            case 0 -> "propeller: {diameter: " + way.length(0.33) + ", throttle shut: stopped}\n";
            case 1 -> "propeller: {diameter: " + way.length(0.33) + ", throttle shut: folded}\n";
            default -> "";
        };
        String sticks = sticks(way, clean, flaps, ailerons);
        String field = field(way);
        String servos = servos(way, flaps, ailerons);
        return "throwline: 1\nname: Made up\n"
                + String.join("", way.ordered(packs, wing, tail, setUps, sticks, more, servos, field));
    }

    private String sticks(Way way, String clean, String flaps, String ailerons) {
        String roll =
                "  " + way.name("full roll", "zqe") + ": {does: roll, " + ailerons + ": {up: 18 deg, down: 12 deg}}\n";
        String camber = random.nextInt(4) == 0 ? ", " + flaps + ": " + number(between(2, 6)) + " deg down" : "";
        String pull = "  " + way.name("full up", "zqf") + ": {does: pull, elevator: " + number(between(8, 20))
                + " deg up" + camber + ", in: [" + clean + "]}\n";
        boolean pulls = random.nextBoolean();
        return "sticks:\n" + (pulls ? String.join("", way.ordered(roll, pull)) : roll);
    }

    private String field(Way way) {
        String wind = random.nextBoolean() ? ", wind: " + way.speed(between(0.5, 6)) : "";
        String obstacle = random.nextBoolean() ? ", obstacle: {height: " + way.length(between(2, 12)) + "}" : "";
        String length = random.nextBoolean() ? ", length: " + way.length(between(30, 200)) : "";
        String ground = List.of("hard", "short grass", "long grass").get(random.nextInt(3));
        return "field: {ground: " + ground + ", height above sea: " + way.length(way.height) + ", temperature: 15 C"
                + wind + obstacle + length + "}\n";
    }

    /** Linkages that reach the throws of all set-ups and sticks; some with measured give and play. */
    private String servos(Way way, String flaps, String ailerons) {
        if (random.nextBoolean()) {
            return "";
        }
        String measured = random.nextBoolean() ? ", give: 4.5 deg, play: " + way.length(0.0008) : "";
        String ofFlaps = "  " + flaps + ": {torque: " + number(between(0.1, 1)) + " N m, "
                + linkage(way, 0.014, 0.012, 0.08) + ", swing: 50 deg, lean: 30 deg, offset: 20 deg" + measured + "}\n";
        String ofAilerons = "  " + ailerons + ": {torque: " + number(between(0.1, 0.6)) + " N m, "
                + linkage(way, 0.012, 0.015, 0.085) + ", swing: 45 deg" + measured + "}\n";
        String ofElevator = "  elevator: {torque: " + number(between(0.1, 0.6)) + " N m, "
                + linkage(way, 0.012, 0.017, 0.62) + ", swing: 45 deg}\n";
        return "servos:\n" + String.join("", way.ordered(ofFlaps, ofAilerons, ofElevator));
    }

    private static String linkage(Way way, double arm, double horn, double rod) {
        return "arm: " + way.length(arm) + ", horn: " + way.length(horn) + ", rod: " + way.length(rod);
    }

    private String wing(Way way, String airfoil) {
        double half = span / 2;
        String sections = "  sections:\n    - {at: " + way.length(0) + ", chord: " + way.length(chord) + ", airfoil: "
                + airfoil + "}\n    - {at: " + way.length(half) + ", chord: " + way.length(taper * chord)
                + ", washout: " + number(between(0, 2)) + " deg}\n";
        String flaps = "    " + way.name("flaps", "zqa") + ": {from: " + way.length(0.08 * half) + ", to: "
                + way.length(0.5 * half) + ", chord: " + number(between(20, 30)) + " %}\n";
        String ailerons = "    " + way.name("ailerons", "zqb") + ": {from: " + way.length(0.52 * half) + ", to: "
                + way.length(0.95 * half) + ", chord: " + number(between(20, 30)) + " %}\n";
        return "wing:\n  position: " + List.of("high", "middle", "low").get(random.nextInt(3)) + "\n  incidence: "
                + number(between(0, 3)) + " deg\n  dihedral: " + number(between(0, 5)) + " deg\n" + sections
                + "  surfaces:\n" + String.join("", way.ordered(flaps, ailerons));
    }

    private double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.9f", value);
    }
}
