package throwline.report.data;

import java.util.List;
import java.util.Optional;
import throwline.report.TooCloseToCall;
import throwline.study.FlyResult;
import throwline.study.Handling;
import throwline.study.Handling.Gain;
import throwline.study.Handling.Move;
import throwline.study.Handling.Moves;
import throwline.study.Handling.Rank;
import throwline.study.Handling.Suggested;
import throwline.study.Headline.Known;
import throwline.units.Dimension;
import throwline.units.Measure;

/** Order of landings, gust margins, pulls and moving surfaces of one set-up as JSON: angles in degrees, loads in g. */
final class HandlingJson {

    private final RecordWriter json;

    HandlingJson(RecordWriter json) {
        this.json = json;
    }

    void write(FlyResult result) {
        Handling handling = result.handling();
        json.write(
                "shortestLandings", handling.ranking().stream().map(Landing::of).toList());
        json.write("tooCloseToCall", tooClose(handling.ranking()));
        json.write("gusts", result.glance().field().margins());
        json.write("pulls", handling.loops());
        json.write("pullGains", handling.gains().stream().map(PullGain::of).toList());
        json.write("noPulls", handling.noLoops());
        json.object("moves", handling.moves(), this::moves);
        json.write("noMoves", handling.noMoves());
    }

    private static List<List<String>> tooClose(List<Rank> ranking) {
        return TooCloseToCall.groups(ranking.stream()
                .map(rank -> new TooCloseToCall.Entry(rank.setUp(), rank.landing()))
                .toList());
    }

    private record Landing(String setup, double value, double low, double high) {
        static Landing of(Rank rank) {
            Known landing = rank.landing();
            return new Landing(rank.setUp(), landing.value(), landing.low(), landing.high());
        }
    }

    private record PullGain(
            String stick, double speed, double radius, double radiusWithoutFlaps, boolean tooCloseToCall) {
        static PullGain of(Gain gain) {
            Known with = gain.with();
            Known without = gain.without();
            return new PullGain(gain.stick(), gain.speed(), with.value(), without.value(), with.tooCloseTo(without));
        }
    }

    private record Time(
            double mix, @Measure(Dimension.ANGLE) double elevator, Optional<Double> time) {
        static Time of(Suggested suggested) {
            return new Time(suggested.mix().share(), suggested.mix().elevator(), suggested.time());
        }
    }

    private void moves(Moves moves) {
        Optional<Double> withoutMix = moves.suggested().stream()
                .filter(suggested -> suggested.mix().share() == 0)
                .findFirst()
                .flatMap(Suggested::time);
        json.write("suggestedTime", withoutMix);
        json.write("suggestedTimes", moves.suggested().stream().map(Time::of).toList());
        json.write("lowerSpeed", moves.lowerSpeed());
        json.objects("lowering", moves.lowering(), this::run);
        json.write("raiseSpeed", moves.raiseSpeed());
        json.write("pilotAfter", moves.terms().reaction());
        json.write("pilotWithin", moves.terms().hand());
        json.objects("raising", moves.raising(), this::run);
    }

    private void run(Move run) {
        json.write("time", run.time());
        json.components(run.mix());
        json.write("end", run.end());
        json.write("rise", known(run, run.balloon()));
        json.write("drop", known(run, run.drop()));
        json.write("mostLoad", known(run, run.mostLoad()));
        json.write("leastLoad", known(run, run.leastLoad()));
        json.write("slowest", known(run, run.slowest()));
        json.write("fastest", known(run, run.fastest()));
        json.write("comesBack", run.comesBack());
        json.write("heightLost", run.heightLost());
        json.write("history", run.history());
    }

    private static double known(Move run, double number) {
        return run.followed() ? number : Double.NaN;
    }
}
