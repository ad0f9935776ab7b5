package throwline.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.stream.Collectors;
import javax.swing.SwingUtilities;
import throwline.input.Problem;
import throwline.section.MeasuredSections;
import throwline.window.session.Disk;
import throwline.window.session.HandComputer;
import throwline.window.session.HandQuestion;
import throwline.window.session.Journal;
import throwline.window.session.KeptAnswers;
import throwline.window.session.ModelDocument;
import throwline.window.session.Opening;
import throwline.window.session.Session;
import throwline.window.session.Unsaved;

/** The running program: which model is open, what is worked out for it, and what happens when it ends. */
final class Program {

    private final Desk desk;
    private final Disk disk;
    private final ModelSource source;
    private final Journal journal;
    private final KeptAnswers keptAnswers;
    private final Flights flights;
    private final Runnable ended;
    private final FutureTask<Opening.Outcome> first;
    private final boolean asked;
    private final MainWindow window;
    private final HandComputer<HandView> computer;
    private final ExecutorService background = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "background");
        thread.setDaemon(true);
        return thread;
    });
    private volatile Ink ink = new Ink(HandPage.PICTURES, 1, false);
    private Optional<Session> session = Optional.empty();
    private volatile throwline.units.Display display = throwline.units.Display.metric();
    private long questions;

    /**
     * @param desk words, settings and look
     * @param disk where files are
     * @param folder for what is kept from one time to the next
     * @param model that is asked for; empty for the one that was open last, or an example
     * @param ended is told when all is put away
     */
    Program(Desk desk, Disk disk, Path folder, Optional<Path> model, Runnable ended) {
        this.desk = desk;
        this.disk = disk;
        this.ended = ended;
        source = new ModelSource(disk);
        journal = new Journal(folder.resolve("unsaved"), ProcessHandle.current().pid(), disk);
        keptAnswers = new KeptAnswers(folder, disk);
        flights = new Flights(desk, disk, this::flown);
        HandViewMaker maker = new HandViewMaker(desk.words(), () -> display, () -> ink, flights::of);
        computer = new HandComputer<>(
                new MeasuredSections(), maker::make, this::show, this::failed, SwingUtilities::invokeLater);
        asked = model.isPresent();
        first = new FutureTask<>(() -> first(model));
        Thread reading = new Thread(first, "first model");
        reading.setDaemon(true);
        reading.start();
        desk.look().putOn();
        window = new MainWindow(desk, this);
    }

    /** The model of the start, read and flown while the window is made: the window then asks for what is known. */
    private Opening.Outcome first(Optional<Path> model) {
        Optional<Path> file = model.or(() -> Optional.of(desk.settings().get("model"))
                .filter(s -> !s.isEmpty())
                .map(Path::of));
        Opening.Outcome outcome = file.map(source::file).orElseGet(this::example);
        if (outcome instanceof Opening.Done done) {
            display = done.document().good().display();
            computer.ask(HandQuestion.of(0, session(done.document())));
        }
        return outcome;
    }

    private Opening.Outcome example() {
        return source.example(desk.say("window.example"));
    }

    /** Opens the model that is asked for, or the one that was open last, or an example that flies already. */
    void start() {
        boolean opened;
        try {
            opened = opened(first.get(), asked);
        } catch (ExecutionException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return;
        }
        if (!opened) {
            openExample();
        }
        window.appear();
        offerLost();
    }

    private void show(HandView view) {
        // Numbers of the first model come before the window has it.
        if (session.isPresent()) {
            window.show(view);
        }
    }

    private void failed(Throwable fault) {
        window.failed(fault);
    }

    private void offerLost() {
        for (Journal.Lost lost : journal.lost()) {
            String name = lost.place().map(Path::toString).orElse(desk.say("window.lost.new"));
            int way = desk.choose(
                    window.frame(),
                    desk.say("window.lost", name),
                    desk.say("window.lost.open"),
                    desk.say("window.lost.later"),
                    desk.say("window.lost.drop"));
            if (way == 0 && takeOver(lost)) {
                return;
            }
            if (way == 2) {
                journal.drop(lost);
            }
        }
    }

    private boolean takeOver(Journal.Lost lost) {
        boolean known = lost.place().map(place -> open(place, false)).orElse(false);
        if (!known) {
            String title = lost.place().map(Path::toString).orElse(desk.say("window.lost.new"));
            if (!opened(source.text(title, lost.text()))) {
                return false;
            }
        }
        Session open = session.orElseThrow();
        open.replace(lost.text());
        journal.drop(lost);
        return true;
    }

    /**
     * Opens a file.
     *
     * @param loudly true to say what is wrong with it
     */
    boolean open(Path file, boolean loudly) {
        return opened(source.file(file), loudly);
    }

    private boolean opened(Opening.Outcome outcome) {
        return opened(outcome, true);
    }

    private boolean opened(Opening.Outcome outcome, boolean loudly) {
        if (outcome instanceof Opening.Done done) {
            use(done.document());
            return true;
        }
        if (loudly && outcome instanceof Opening.Faulty faulty) {
            desk.tell(window.frame(), sentences(faulty.problems()));
        }
        if (loudly && outcome instanceof Opening.Unread unread) {
            desk.tell(
                    window.frame(),
                    desk.say(unread.why().code(), unread.why().arguments().toArray()));
        }
        return false;
    }

    private String sentences(List<Problem> problems) {
        return problems.stream().limit(8).map(p -> p.say(desk.words())).collect(Collectors.joining("\n"));
    }

    /** Opens an invented example, which has no file until it is saved. */
    void openExample() {
        opened(example());
    }

    /** Opens a text that has no file yet. */
    boolean openNew(String title, String text) {
        return opened(source.text(title, text));
    }

    private Session session(ModelDocument document) {
        return new Session(desk.words(), document, disk, new Unsaved(journal, background));
    }

    private void use(ModelDocument document) {
        Session opened = session(document);
        session = Optional.of(opened);
        display = document.good().display();
        // Asked first: the numbers are on their way while the pages are made, and pages see the state of the flights.
        opened.onChange(this::ask);
        ask();
        window.use(opened);
    }

    /** Flights have told something, or are not to be used any more. */
    private void flown() {
        ask();
        window.changed();
    }

    Flights flights() {
        return flights;
    }

    Optional<Session> session() {
        return session;
    }

    MainWindow window() {
        return window;
    }

    ExecutorService background() {
        return background;
    }

    KeptAnswers keptAnswers() {
        return keptAnswers;
    }

    Disk disk() {
        return disk;
    }

    /** Asks for numbers of what stands under the hand. */
    void ask() {
        session.ifPresent(open -> {
            display = open.document().good().display();
            ink = new Ink(window.pictureWidth(), window.scale(), desk.look().isDark());
            flights.follow(open, ink);
            questions++;
            computer.ask(HandQuestion.of(questions, open));
        });
    }

    /** How pictures are painted now. */
    Ink ink() {
        return ink;
    }

    /** Ends the program. */
    void end() {
        session.ifPresent(Session::close);
        desk.settings()
                .put(
                        "model",
                        session.flatMap(open -> open.document().place())
                                .map(Path::toString)
                                .orElse(""));
        desk.settings().save();
        computer.close();
        background.execute(ended);
        background.shutdown();
    }
}
