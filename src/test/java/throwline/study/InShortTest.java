package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import throwline.model.Model;
import throwline.report.Fixture;
import throwline.study.Comparison.PackResult;
import throwline.study.Danger.Use;
import throwline.words.Message;
import throwline.words.Words;

/** Rules of the ranking and of what may be recommended, over made-up results; the physics is not asked. */
class InShortTest {

    private static final Comparison ORCHARD = Fixture.orchard().comparison();
    private static final Model MODEL = ORCHARD.model();
    private static final List<String> NOTES = Stream.of(Danger.values())
            .flatMap(danger -> danger.notes().stream())
            .toList();

    @Test
    void everyNoteThatTellsOfADangerIsOneThatIsSaid() {
        Words words = Words.load();
        assertThat(NOTES).isNotEmpty().allMatch(words::has);
    }

    @Test
    void noSetUpIsNamedForWhatADangerRulesItOutFor() {
        Random random = new Random(20261127);
        int named = 0;
        int ruledOut = 0;
        for (int i = 0; i < 2000; i++) {
            PackResult pack = made(random);
            InShort inShort = InShort.of(MODEL, pack.setUps());
            for (SetUpResult result : pack.setUps()) {
                List<Danger> dangers = Danger.of(result, MODEL.field());
                String name = result.setUp().name();
                assertThat(dangers).isSorted();
                dangers.forEach(
                        danger -> assertThat(inShort.dangers().get(danger)).contains(name));
                boolean slow =
                        inShort.slowest().filter(s -> s.setUps().contains(name)).isPresent();
                boolean steep = Stream.concat(inShort.steeper().stream(), inShort.noSteeper().stream())
                        .anyMatch(a -> a.setUp().equals(name));
                named += slow || steep ? 1 : 0;
                ruledOut += Danger.anyRulesOut(dangers, Use.LANDING) ? 1 : 0;
                assertThat(slow && Danger.anyRulesOut(dangers, Use.LANDING))
                        .as(name)
                        .isFalse();
                assertThat(steep && Danger.anyRulesOut(dangers, Use.DESCENT))
                        .as(name)
                        .isFalse();
            }
            assertThat(List.copyOf(inShort.dangers().keySet())).isSorted();
        }
        assertThat(named).isPositive();
        assertThat(ruledOut).isPositive();
    }

    /** Whoever may be named and is clearly slower than the one that is would have been named instead. */
    @Test
    void nobodyWhoMayBeNamedIsClearlySlowerThanTheSlowest() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            PackResult pack = made(random);
            Optional<InShort.Slowest> slowest = InShort.of(MODEL, pack.setUps()).slowest();
            for (SetUpResult result : pack.setUps()) {
                boolean may = !Danger.anyRulesOut(Danger.of(result, MODEL.field()), Use.LANDING);
                if (may && result.approachSpeed() instanceof Headline.Known own) {
                    assertThat(slowest).isPresent();
                    assertThat(own.value() < slowest.get().speed()
                                    && !slowest.get()
                                            .setUps()
                                            .contains(result.setUp().name()))
                            .isFalse();
                }
            }
        }
    }

    /** Somebody is the least bad only where nobody may be named, and nobody's worst danger then ranks less. */
    @Test
    void theLeastWarnedIsNamedOnlyWhereAllAreWarnedOf() {
        Random random = new Random(11);
        int found = 0;
        for (int i = 0; i < 3000; i++) {
            PackResult pack = made(random);
            InShort inShort = InShort.of(MODEL, pack.setUps());
            if (inShort.leastWarned().isEmpty()) {
                continue;
            }
            found++;
            assertThat(inShort.slowest()).isEmpty();
            InShort.LeastWarned least = inShort.leastWarned().get();
            for (SetUpResult result : pack.setUps()) {
                List<Danger> dangers = Danger.of(result, MODEL.field());
                boolean flies = !Danger.anyRulesOut(dangers, Use.FLYING);
                Danger worst = dangers.stream()
                        .filter(danger -> danger.rulesOut(Use.LANDING))
                        .findFirst()
                        .orElseThrow();
                if (flies && result.approachSpeed() instanceof Headline.Known speed) {
                    assertThat(worst).isLessThanOrEqualTo(least.worst());
                    assertThat(worst == least.worst() && speed.value() < least.speed())
                            .isFalse();
                }
            }
        }
        assertThat(found).isGreaterThan(50);
    }

    @Test
    void aBalanceBehindTheNeutralPointComesFirst() {
        InShort inShort =
                InShort.of(MODEL, Fixture.unstable().comparison().packs().get(0).setUps());
        assertThat(inShort.dangers().keySet().iterator().next()).isEqualTo(Danger.BALANCE_BEHIND_NEUTRAL);
        assertThat(inShort.slowest()).isEmpty();
        assertThat(inShort.steeper()).isEmpty();
    }

    @Test
    void whereNothingWasFoundNothingIsNamed() {
        InShort inShort = InShort.of(
                MODEL, Fixture.nothingFound().comparison().packs().get(0).setUps());
        assertThat(inShort.slowest()).isEmpty();
        assertThat(inShort.elevators()).isEmpty();
        assertThat(inShort.dangers().get(Danger.NO_STEADY_APPROACH)).hasSize(4);
    }

    /** The set-ups of the fixture with other speeds, angles and notes, all at random. */
    private static PackResult made(Random random) {
        PackResult pack = ORCHARD.packs().get(0);
        List<SetUpResult> made = new ArrayList<>();
        for (SetUpResult result : pack.setUps()) {
            Map<FlightQuantity, Headline> numbers = new EnumMap<>(FlightQuantity.class);
            numbers.put(FlightQuantity.APPROACH_SPEED, number(random, 8, 16));
            numbers.put(FlightQuantity.DESCENT_ANGLE, number(random, 0.02, 0.6));
            numbers.put(FlightQuantity.LANDING_DISTANCE, number(random, 30, 160));
            List<Message> notes = new ArrayList<>();
            while (random.nextInt(3) == 0) {
                notes.add(Message.of(NOTES.get(random.nextInt(NOTES.size()))));
            }
            made.add(new SetUpResult(
                    result.setUp(),
                    result.headlines().with(numbers),
                    result.firstStall(),
                    result.sweep(),
                    result.load(),
                    result.servos(),
                    result.field(),
                    result.oneSided(),
                    notes));
        }
        return new PackResult(pack.pack(), made);
    }

    private static Headline number(Random random, double least, double most) {
        if (random.nextInt(8) == 0) {
            return new Headline.Unknown("why.not-found");
        }
        double value = least + (most - least) * random.nextDouble();
        double half = value * 0.15 * random.nextDouble();
        return new Headline.Known(value, value - half, value + half, Headline.Basis.ASSUMED, random.nextDouble());
    }
}
