package throwline.window.session;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Function;
import throwline.model.SetUp;
import throwline.section.SectionAerodynamics;
import throwline.study.Bands;
import throwline.study.HandStudy;
import throwline.study.SetUpResult;
import throwline.study.ThrottleAnswer;

/**
 * Numbers that follow the hand. One thread finds steady flight, another all that takes longer; each works on the newest
 * position only. A view is made on the thread that found the numbers and handed to the screen's own, never an older one
 * after a newer one. All numbers of a view belong to one position.
 *
 * @param <V> what is shown
 */
public final class HandComputer<V> implements AutoCloseable {

    /** The long work begins once the hand has rested for so long, ms. */
    private static final long REST = 25;

    /** Answers that are kept, so that going back and forth costs nothing. */
    private static final int KEPT = 60;

    private final SectionAerodynamics sections;
    private final Bands bands = Bands.load();
    private final Function<Answer, V> maker;
    private final Consumer<V> shown;
    private final Consumer<Throwable> failed;
    private final Executor screen;
    private final NewestWins<HandQuestion> quick;
    private final NewestWins<HandQuestion> slow;
    private final Studies quickStudies = new Studies();
    private final Studies slowStudies = new Studies();
    private final AtomicLong asked = new AtomicLong(Long.MIN_VALUE);
    private final Map<HandQuestion.Basis, SetUpResult> finished = new LinkedHashMap<>();
    /** Only touched on the screen's thread. */
    private Shown last = new Shown(Long.MIN_VALUE, false);

    /**
     * An answer.
     *
     * @param question what was asked
     * @param density of the air, kg/m^3
     * @param now what was found of the set-up at hand
     * @param against what was found of the other
     * @param powered steady flight at the throttle; empty while it is closed, not found yet, or there is none
     * @param bandsComeLater true where the bands of steady flight are not found yet
     */
    public record Answer(
            HandQuestion question,
            double density,
            SetUpResult now,
            Optional<SetUpResult> against,
            Optional<ThrottleAnswer> powered,
            boolean bandsComeLater) {

        /** True where nothing is being worked out any more. */
        public boolean isFinished() {
            return now.isFinished() && against.map(SetUpResult::isFinished).orElse(true);
        }
    }

    private record Shown(long number, boolean finished) {}

    /**
     * @param sections makes section curves
     * @param maker makes a view of an answer, on a thread of this computer
     * @param shown takes a view, on the screen's thread
     * @param failed takes a fault, on the screen's thread
     * @param screen runs on the screen's thread
     */
    public HandComputer(
            SectionAerodynamics sections,
            Function<Answer, V> maker,
            Consumer<V> shown,
            Consumer<Throwable> failed,
            Executor screen) {
        this.sections = sections;
        this.maker = maker;
        this.shown = shown;
        this.failed = failed;
        this.screen = screen;
        quick = new NewestWins<>("steady flight", 0, this::quick);
        slow = new NewestWins<>("all numbers", REST, this::slow);
    }

    /** Asks; returns at once. */
    public void ask(HandQuestion question) {
        asked.set(question.number());
        quick.ask(question);
    }

    @Override
    public void close() {
        quick.close();
        slow.close();
    }

    private void quick(HandQuestion question) {
        guarded(() -> {
            HandStudy study = quickStudies.of(question);
            Function<SetUp, SetUpResult> found =
                    setUp -> known(question.basis(setUp)).orElseGet(() -> study.steady(setUp, question.setUps()));
            show(answer(question, study, found, Optional.empty()), question.number());
            slow.ask(question);
        });
    }

    private void slow(HandQuestion question) {
        guarded(() -> {
            if (asked.get() != question.number()) {
                return;
            }
            HandStudy study = slowStudies.of(question);
            Function<SetUp, SetUpResult> found = setUp -> known(question.basis(setUp))
                    .orElseGet(() -> keep(question.basis(setUp), study.full(setUp, question.setUps())));
            Optional<ThrottleAnswer> powered = question.throttle() > 0
                    ? study.powered(question.setUp(), question.setUps(), question.throttle())
                    : Optional.empty();
            Answer answer = answer(question, study, found, powered);
            if (asked.get() == question.number()) {
                show(answer, question.number());
            }
        });
    }

    private static Answer answer(
            HandQuestion question,
            HandStudy study,
            Function<SetUp, SetUpResult> found,
            Optional<ThrottleAnswer> powered) {
        SetUpResult now = found.apply(question.setUp());
        return new Answer(
                question,
                study.density(),
                now,
                question.against().map(found),
                powered,
                study.bandsComeLater() && !now.isFinished());
    }

    private void show(Answer answer, long number) {
        V view = maker.apply(answer);
        boolean finished = answer.isFinished();
        screen.execute(() -> {
            boolean newer = number > last.number() || (number == last.number() && (finished || !last.finished()));
            if (newer) {
                last = new Shown(number, finished);
                shown.accept(view);
            }
        });
    }

    private void guarded(Runnable work) {
        try {
            work.run();
        } catch (RuntimeException | Error fault) {
            screen.execute(() -> failed.accept(fault));
        }
    }

    private Optional<SetUpResult> known(HandQuestion.Basis basis) {
        synchronized (finished) {
            return Optional.ofNullable(finished.get(basis));
        }
    }

    private SetUpResult keep(HandQuestion.Basis basis, SetUpResult result) {
        synchronized (finished) {
            finished.put(basis, result);
            if (finished.size() > KEPT) {
                finished.remove(finished.keySet().iterator().next());
            }
        }
        return result;
    }

    /** A model made ready, for one thread; made anew where another comes. */
    private final class Studies {
        private Optional<HandQuestion.Airframed> airframed = Optional.empty();
        private Optional<HandStudy> study = Optional.empty();

        HandStudy of(HandQuestion question) {
            Optional<HandQuestion.Airframed> wanted = Optional.of(question.airframed());
            if (!wanted.equals(airframed)) {
                study = Optional.of(
                        new HandStudy(wanted.get().model(), question.airfoils(), question.pack(), sections, bands));
                airframed = wanted;
            }
            return study.orElseThrow();
        }
    }
}
