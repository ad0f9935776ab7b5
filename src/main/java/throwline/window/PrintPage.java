package throwline.window;

import java.awt.BorderLayout;
import java.awt.Desktop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import throwline.report.ReportFile;
import throwline.report.sheet.Size;
import throwline.window.session.BinaryFiles;
import throwline.window.session.Session;

/** Sheets for the bench and the field, the page of all set-ups, and the charts, as files in a folder. */
final class PrintPage implements WindowPage {

    private static final String BENCH = "bench.pdf";

    private final Desk desk;
    private final Session session;
    private final Flights flights;
    private final JPanel page = new JPanel(new BorderLayout());
    private final JComboBox<String> paper = new JComboBox<>();
    private final JLabel state = new JLabel(" ");
    private final JButton look;
    private final Work work = new Work();
    private final WorkControls controls;
    private Optional<Path> written = Optional.empty();

    PrintPage(Desk desk, Session session, Flights flights) {
        this.desk = desk;
        this.flights = flights;
        this.session = session;
        controls = new WorkControls(desk, work, state);
        look = Line.button(desk, "window.print.look", e -> look());
        for (Size.Paper each : Size.Paper.values()) {
            paper.addItem(each == Size.Paper.A4 ? "A4" : "Letter");
        }
        paper.setName("paper");
        Column column = new Column(10);
        column.setBorder(BorderFactory.createEmptyBorder(14, 16, 14, 16));
        part(column, "sheets", new Line(desk).named("window.print.paper", paper));
        part(column, "page", new Line(desk));
        part(column, "charts", new Line(desk));
        column.add(new Line(desk).with(controls.progress()).with(controls.stop()));
        state.setName("print state");
        column.add(state);
        column.add(new Line(desk).with(look).far());
        controls.busy(false);
        look.setVisible(false);
        page.add(column.scrolled(), BorderLayout.CENTER);
    }

    private void part(Column column, String what, Line line) {
        String key = "window.print." + what;
        column.add(Look.bold(new JLabel(desk.say(key + ".title"))));
        JLabel text = new JLabel(Sentence.broken(desk.say(key + ".text")));
        text.setForeground(Look.quiet());
        column.add(text);
        column.add(line.button(key, e -> ask(what)).far());
    }

    @Override
    public String key() {
        return "print";
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void close() {
        work.stop();
    }

    @Override
    public void changed() {}

    private void ask(String what) {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        chooser.setName("folder");
        chooser.setDialogTitle(desk.say("window.print.folder"));
        String last = desk.settings().get("folder");
        Optional<Path> proposed = session.document()
                .place()
                .map(Path::getParent)
                .filter(folder -> last.isEmpty())
                .or(() -> last.isEmpty() ? Optional.empty() : Optional.of(Path.of(last)));
        proposed.ifPresent(folder -> chooser.setSelectedFile(folder.toFile()));
        if (chooser.showDialog(page, desk.say("window.print.here")) == JFileChooser.APPROVE_OPTION) {
            write(what, chooser.getSelectedFile().toPath());
        }
    }

    /** Works the files out and writes them into a folder. */
    void write(String what, Path folder) {
        desk.settings().put("folder", folder.toString());
        Compared.Task task = Compared.Task.of(desk.words(), session, flights.of(session.model()), true);
        Size.Paper on = "Letter".equals(paper.getSelectedItem()) ? Size.Paper.LETTER : Size.Paper.A4;
        Work.Task<List<ReportFile>> files = sections -> new PrintedFiles(task, desk.words()).of(what, on, sections);
        controls.busy(true);
        state.setText(desk.say("window.working"));
        work.begin(files, made -> put(folder, made), fault -> {
            controls.busy(false);
            state.setText(desk.say("window.fault", fault.getClass().getSimpleName()));
        });
    }

    private void put(Path folder, List<ReportFile> files) {
        controls.busy(false);
        List<String> there = files.stream()
                .map(ReportFile::name)
                .filter(name -> Files.exists(folder.resolve(name)))
                .toList();
        if (!there.isEmpty()) {
            int way = desk.choose(
                    page,
                    desk.say("window.print.there", folder, String.join(", ", there)),
                    desk.say("window.cancel"),
                    desk.say("window.taken.over"));
            if (way != 1) {
                state.setText(desk.say("window.stopped"));
                return;
            }
        }
        Optional<Path> failed = BinaryFiles.write(
                folder, files.stream().collect(Collectors.toMap(ReportFile::name, ReportFile::content)));
        if (failed.isPresent()) {
            state.setText(Sentence.broken(desk.say("window.disk.full", failed.get())));
            return;
        }
        List<String> names =
                new ArrayList<>(files.stream().map(ReportFile::name).toList());
        state.setText(Sentence.broken(desk.say("window.print.done", folder, String.join(", ", names))));
        written = names.stream()
                .filter(name -> name.equals(BENCH) || (!names.contains(BENCH) && name.equals(names.get(0))))
                .findFirst()
                .map(folder::resolve);
        look.setVisible(written.isPresent() && Desktop.isDesktopSupported());
    }

    private void look() {
        written.ifPresent(file -> {
            try {
                Desktop.getDesktop().open(file.toFile());
            } catch (IOException | UnsupportedOperationException e) {
                state.setText(Sentence.broken(desk.say("window.print.no-viewer", file)));
            }
        });
    }
}
