package throwline.window;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import javax.swing.SwingUtilities;
import throwline.input.NamedAirfoils;
import throwline.input.PackedAirfoils;
import throwline.input.Problem;
import throwline.section.AirfoilLibrary;
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

    private static final String EXAMPLE = "orchard";

    private final Desk desk;
    private final Disk disk;
    private final Journal journal;
    private final KeptAnswers keptAnswers;
    private final Flights flights;
    private final Runnable ended;
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

    Program(Desk desk, Disk disk, Path folder, Runnable ended) {
        this.desk = desk;
        this.disk = disk;
        this.ended = ended;
        journal = new Journal(folder.resolve("unsaved"), ProcessHandle.current().pid(), disk);
        keptAnswers = new KeptAnswers(folder, disk);
        desk.look().putOn();
        flights = new Flights(desk, disk, this::flown);
        HandViewMaker maker = new HandViewMaker(desk.words(), () -> display, () -> ink, flights::of);
        window = new MainWindow(desk, this);
        computer = new HandComputer<>(
                new MeasuredSections(), maker::make, window::show, window::failed, SwingUtilities::invokeLater);
    }

    /** Opens a model, or the one that was open last, or an example that flies already. */
    void start(Optional<Path> model) {
        Optional<Path> last = model.or(() -> Optional.of(desk.settings().get("model"))
                .filter(s -> !s.isEmpty())
                .map(Path::of));
        boolean opened = last.isPresent() && open(last.get(), model.isPresent());
        if (!opened) {
            openExample();
        }
        window.appear();
        offerLost();
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
            if (!opened(opening().text(title, lost.text(), airfoils(Path.of(""))))) {
                return false;
            }
        }
        Session open = session.orElseThrow();
        open.replace(lost.text());
        journal.drop(lost);
        return true;
    }

    private Opening opening() {
        return new Opening(disk);
    }

    /** Airfoils of the library, and by files meant from a folder. */
    private static NamedAirfoils airfoils(Path folder) {
        return new NamedAirfoils(new PackedAirfoils(), folder);
    }

    /**
     * Opens a file.
     *
     * @param loudly true to say what is wrong with it
     */
    boolean open(Path file, boolean loudly) {
        Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(Path.of(""));
        AirfoilLibrary airfoils = airfoils(folder);
        Opening.Outcome outcome = opening().file(file.toAbsolutePath().normalize(), airfoils);
        if (outcome instanceof Opening.Unread unread) {
            if (loudly) {
                desk.tell(
                        window.frame(),
                        desk.say(unread.why().code(), unread.why().arguments().toArray()));
            }
            return false;
        }
        return opened(outcome, loudly);
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
        return false;
    }

    private String sentences(List<Problem> problems) {
        return problems.stream().limit(8).map(p -> p.say(desk.words())).collect(Collectors.joining("\n"));
    }

    /** Opens an invented example, which has no file until it is saved. */
    void openExample() {
        opened(opening().text(desk.say("window.example"), example(EXAMPLE), new PackedAirfoils()));
    }

    /** Opens a text that has no file yet. */
    boolean openNew(String title, String text) {
        return opened(opening().text(title, text, airfoils(Path.of(""))));
    }

    private static String example(String name) {
        try (InputStream in = Program.class.getResourceAsStream("/throwline/examples/" + name + ".yaml")) {
            if (in == null) {
                throw new IllegalStateException("the examples are missing from the jar");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void use(ModelDocument document) {
        Session opened = new Session(desk.words(), document, disk, new Unsaved(journal, background));
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
