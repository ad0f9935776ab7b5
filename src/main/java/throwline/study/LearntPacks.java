package throwline.study;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import throwline.correction.Doubt;
import throwline.correction.Flying;
import throwline.correction.Posterior;
import throwline.model.SetUp;
import throwline.study.Comparison.PackResult;

/** Numbers of all set-ups with all packs after the flights. */
final class LearntPacks {

    private final Comparison before;
    private final FlownFleet fleet;
    private final Posterior posterior;
    private final LearntState state;
    private final List<FlownFor> flown;
    private final Comparison after;

    /**
     * @param before the numbers before any flight
     * @param fleet where its set-ups stand
     * @param posterior what was learnt
     * @param state the same, for numbers with bands
     * @param flown what these set-ups were flown for
     */
    LearntPacks(Comparison before, FlownFleet fleet, Posterior posterior, LearntState state, List<FlownFor> flown) {
        this.before = before;
        this.fleet = fleet;
        this.posterior = posterior;
        this.state = state;
        this.flown = List.copyOf(flown);
        after = new Comparison(
                before.model(),
                before.density(),
                before.packs().stream().map(this::corrected).toList(),
                before.warnings());
    }

    Comparison before() {
        return before;
    }

    Comparison after() {
        return after;
    }

    private PackResult corrected(PackResult pack) {
        return new PackResult(
                pack.pack(),
                pack.setUps().stream()
                        .map(result -> corrected(result, pack.pack().name()))
                        .toList());
    }

    /** Numbers of a set-up with a pack, by the pack's name, put right. */
    SetUpResult corrected(SetUpResult result, String pack) {
        SetUp other = before.model().reference();
        Optional<Flying> flying = fleet.now(result.setUp().name(), pack);
        Optional<Flying> reference = result.setUp().equals(other) ? Optional.empty() : fleet.now(other.name(), pack);
        return flying.map(f -> new LearntRows(
                                before.model(),
                                result,
                                f,
                                reference,
                                state,
                                quantity -> isFlown(result.setUp().name(), quantity))
                        .corrected())
                .orElse(result);
    }

    /** Whether a set-up was flown for a number, by a note that does not contradict the rest. */
    private boolean isFlown(String setUp, FlightQuantity quantity) {
        return flown.stream()
                .filter(one -> one.setUp().equals(setUp) && one.tellsOf(quantity))
                .anyMatch(one -> posterior.wrong().getOrDefault(one.source(), 0.0) <= Doubt.CONTRADICTS);
    }

    /** Set-ups of which a number moved by more than its band. */
    List<String> surprises() {
        Set<String> names = new LinkedHashSet<>();
        for (SetUpResult result : after.packs().get(0).setUps()) {
            for (HeadlineNumbers.Entry entry : result.headlines().all()) {
                if (entry.number() instanceof Headline.Known known
                        && entry.quantity().isOn(FlightQuantity.Screen.CLOSE_CALLS)
                        && known.learnt()
                                .filter(old -> known.value() > old.high() || known.value() < old.low())
                                .isPresent()) {
                    names.add(result.setUp().name());
                }
            }
        }
        return List.copyOf(names);
    }
}
