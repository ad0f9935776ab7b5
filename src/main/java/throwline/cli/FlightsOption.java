package throwline.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import throwline.input.FlightsFile;
import throwline.input.ReadFlights;
import throwline.model.Model;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.Comparison;
import throwline.study.LearnStudy;
import throwline.study.Lessons;
import throwline.study.TriedLessons;

/** Flights beside a model file, and whether an answer uses what they told. */
final class FlightsOption {

    @Option(names = "--without-flights", order = 25)
    private boolean without;

    /**
     * What the flights beside a model file tell.
     *
     * @param context of the command
     * @param file the model file as named on the command line
     * @param known the model before any flight
     * @param library its airfoils
     * @return empty where there are none, or they are not wanted
     * @throws WrongInput with all problems of the file of flights
     */
    Optional<Lessons> learn(Context context, String file, Comparison known, AirfoilLibrary library) {
        return read(context, file, known.model())
                .flatMap(read -> new LearnStudy(new MeasuredSections(), Bands.load())
                        .learn(known, library, read.notes(), read.logs()));
    }

    /**
     * What the flights beside a model file tell of it and of throws that are tried.
     *
     * @param known the model as its file has it, before any flight
     * @param tried the same with the throws that are tried
     * @return empty where there are none, or they are not wanted
     * @throws WrongInput with all problems of the file of flights
     */
    Optional<TriedLessons> learn(
            Context context, String file, Comparison known, Comparison tried, AirfoilLibrary library) {
        return read(context, file, known.model())
                .flatMap(read -> new LearnStudy(new MeasuredSections(), Bands.load())
                        .learn(known, tried, library, read.notes(), read.logs()));
    }

    /**
     * The flights of a model that an answer is to use.
     *
     * @return empty where there are none, or they are not wanted
     * @throws WrongInput with all problems of them
     */
    Optional<ReadFlights.Notes> read(Context context, String file, Model model) {
        return areThere(file)
                ? kept(context, Path.of(file)).map(kept -> notes(context, kept, model))
                : Optional.empty();
    }

    /** Whether there are flights of a model that an answer is to use. */
    boolean areThere(String file) {
        try {
            return !without
                    && !file.equals(ModelReader.STANDARD_INPUT)
                    && !FlightsFile.kept(Path.of(file)).isEmpty();
        } catch (InvalidPathException e) {
            return false;
        }
    }

    /**
     * Where the flights of a model are kept.
     *
     * @throws WrongInput where they stand in two places
     */
    static Optional<Path> kept(Context context, Path model) {
        List<Path> kept = FlightsFile.kept(model);
        if (kept.size() > 1) {
            throw new WrongInput(context.words().say("cli.flights.twice", kept.get(0), kept.get(1)));
        }
        return kept.stream().findFirst();
    }

    /**
     * The notes of a file.
     *
     * @throws WrongInput with all its problems
     */
    static ReadFlights.Notes notes(Context context, Path file, Model model) {
        ReadFlights read = FlightsFile.read(file, model);
        if (read instanceof ReadFlights.Faulty faulty) {
            throw new WrongInput(faulty.problems().stream()
                    .map(problem -> problem.say(context.words()))
                    .collect(Collectors.joining("\n")));
        }
        return (ReadFlights.Notes) read;
    }
}
