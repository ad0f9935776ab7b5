package throwline.section.computed;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Lessons of the library's measured airfoils for others, and the rules that follow. Immutable. */
public final class LearnedAirfoils {

    private static final String RESOURCE = "/throwline/learned.csv";

    private static final List<String> HEAD = List.of(
            "# Written by throwline validate --out DIR; copy it from there, do not edit it. The measured airfoils as examples for those",
            "# that nobody measured: traits of their outlines (computed) and what the library says of them at Reynolds numbers of",
            "# 60 000, 100 000, 150 000, 200 000 and 300 000. Angles in rad.",
            "# name, thickness, camber, edge, zero-lift angle and moment without friction, peak lift, peak angle; then five zero-lift",
            "# angles, five most lifts, five stall angles and five drags at each of the lifts 0.2, 0.5 and 0.8. Between traits and figures stand",
            "# logarithms of drag by the boundary layer at those lifts and also 500 000.");

    private final List<LearnedAirfoil> airfoils;
    private final Map<SectionFigure, SectionRule> rules = new EnumMap<>(SectionFigure.class);

    /** Rules from these airfoils. */
    public LearnedAirfoils(List<LearnedAirfoil> airfoils) {
        this.airfoils = airfoils.stream()
                .filter(airfoil -> SectionRange.holds(airfoil.traits()))
                .toList();
        for (SectionFigure figure : SectionFigure.values()) {
            rules.put(figure, SectionRule.of(figure, this.airfoils));
        }
    }

    /** The table of the product. */
    public static LearnedAirfoils load() {
        try (InputStream in = LearnedAirfoils.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the table of learned airfoils is missing from the jar");
            }
            return new LearnedAirfoils(new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(LearnedAirfoil::of)
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the others teach without one of them. */
    public LearnedAirfoils without(String name) {
        return new LearnedAirfoils(airfoils.stream()
                .filter(airfoil -> !airfoil.name().equals(name))
                .toList());
    }

    /** The table as text. */
    public String text() {
        return String.join("\n", HEAD)
                + airfoils.stream().map(LearnedAirfoil::line).collect(Collectors.joining("\n", "\n", "\n"));
    }

    double predicted(SectionFigure figure, SectionTraits traits, double reynolds) {
        return rule(figure).at(traits, reynolds);
    }

    /** The same by the rule alone, without what it misses on others. */
    double alone(SectionFigure figure, SectionTraits traits, double reynolds) {
        return rule(figure).alone(traits, reynolds);
    }

    private SectionRule rule(SectionFigure figure) {
        SectionRule rule = rules.get(figure);
        if (rule == null) {
            throw new IllegalStateException("no rule for " + figure);
        }
        return rule;
    }

    Optional<LearnedAirfoil> find(String name) {
        return airfoils.stream().filter(a -> a.name().equals(name)).findFirst();
    }

    /** The measured airfoils, the most alike first. */
    List<LearnedAirfoil> nearest(SectionTraits traits) {
        return airfoils.stream()
                .sorted(java.util.Comparator.comparingDouble(airfoil -> traits.distance(airfoil.traits())))
                .toList();
    }
}
