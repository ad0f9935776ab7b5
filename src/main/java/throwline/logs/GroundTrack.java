package throwline.logs;

import java.util.ArrayList;
import java.util.List;

/**
 * Velocities over the ground, one for each fix of the receiver: repeated rows count once.
 *
 * @param times s
 * @param east m/s
 * @param north m/s
 * @param fromPositions true where they are differences of positions
 */
@SuppressWarnings("ArrayRecordComponent") // channels, never compared
record GroundTrack(double[] times, double[] east, double[] north, boolean fromPositions) {

    /** WGS84: half axis, m, and square of the eccentricity (MEMORY). */
    private static final double AXIS = 6_378_137;

    private static final double ECCENTRICITY = 6.694_379_99e-3;

    /** A value that stays the same so many usual intervals long is one that did not change. */
    private static final double STANDS = 1.5;

    /** Positions that a course is taken from lie so far apart, s. */
    private static final double ACROSS = 1;

    static GroundTrack of(FlightLog log) {
        double[] t = log.channel(Channel.TIME);
        double[] speed = log.channel(Channel.GROUND_SPEED);
        double[] course = log.channel(Channel.COURSE);
        double[] latitude = log.channel(Channel.LATITUDE);
        double[] longitude = log.channel(Channel.LONGITUDE);
        boolean positions = latitude.length > 0 && longitude.length > 0;
        if (speed.length > 0 && course.length > 0) {
            int[] fixes = fixes(t, speed, course);
            double[] east = new double[fixes.length];
            double[] north = new double[fixes.length];
            for (int i = 0; i < fixes.length; i++) {
                east[i] = speed[fixes[i]] * Math.sin(course[fixes[i]]);
                north[i] = speed[fixes[i]] * Math.cos(course[fixes[i]]);
            }
            return new GroundTrack(times(t, fixes), east, north, false);
        }
        if (!positions) {
            return new GroundTrack(new double[0], new double[0], new double[0], true);
        }
        GroundTrack moved = moved(t, latitude, longitude);
        return speed.length == 0 ? moved : moved.withSpeed(t, speed);
    }

    /** The same directions with speeds of their own. */
    private GroundTrack withSpeed(double[] t, double[] speed) {
        double[] x = east.clone();
        double[] y = north.clone();
        int row = 0;
        for (int i = 0; i < times.length; i++) {
            while (row + 1 < t.length && t[row] < times[i]) {
                row++;
            }
            double length = Math.hypot(east[i], north[i]);
            x[i] = length > 0 ? east[i] / length * speed[row] : 0;
            y[i] = length > 0 ? north[i] / length * speed[row] : 0;
        }
        return new GroundTrack(times, x, y, false);
    }

    private static GroundTrack moved(double[] t, double[] latitude, double[] longitude) {
        int[] fixes = fixes(t, latitude, longitude);
        double[] times = times(t, fixes);
        double[] east = new double[fixes.length];
        double[] north = new double[fixes.length];
        double middle = fixes.length == 0 ? 0 : latitude[fixes[0]];
        for (int i = 0; i < fixes.length; i++) {
            int from = i;
            int to = i;
            while (to + 1 < fixes.length && times[to] - times[i] < ACROSS / 2) {
                to++;
            }
            while (from > 0 && times[i] - times[from] < ACROSS / 2) {
                from--;
            }
            double seconds = times[to] - times[from];
            if (seconds > 0) {
                east[i] = (longitude[fixes[to]] - longitude[fixes[from]]) * eastPerRadian(middle) / seconds;
                north[i] = (latitude[fixes[to]] - latitude[fixes[from]]) * northPerRadian(middle) / seconds;
            }
        }
        return new GroundTrack(times, east, north, true);
    }

    /** Metres eastward a radian of longitude, at a latitude, on the ellipsoid. */
    static double eastPerRadian(double latitude) {
        return AXIS * Math.cos(latitude) / Math.sqrt(1 - ECCENTRICITY * Math.pow(Math.sin(latitude), 2));
    }

    /** Metres northward a radian of latitude. */
    static double northPerRadian(double latitude) {
        return AXIS * (1 - ECCENTRICITY) / Math.pow(1 - ECCENTRICITY * Math.pow(Math.sin(latitude), 2), 1.5);
    }

    private static double[] times(double[] t, int[] rows) {
        double[] times = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            times[i] = t[rows[i]];
        }
        return times;
    }

    /** Rows with a new fix. */
    private static int[] fixes(double[] t, double[] one, double[] other) {
        List<Integer> changed = new ArrayList<>();
        for (int i = 0; i < t.length; i++) {
            int last = changed.isEmpty() ? -1 : changed.get(changed.size() - 1);
            boolean there = !Double.isNaN(one[i]) && !Double.isNaN(other[i]);
            if (there && (last < 0 || one[i] != one[last] || other[i] != other[last])) {
                changed.add(i);
            }
        }
        double[] times = changed.stream().mapToDouble(i -> t[i]).toArray();
        double usual = STANDS * Grid.median(times);
        List<Integer> fixes = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < t.length; i++) {
            boolean isNew = next < changed.size() && changed.get(next) == i;
            next += isNew ? 1 : 0;
            boolean there = !Double.isNaN(one[i]) && !Double.isNaN(other[i]);
            if (isNew || (there && !fixes.isEmpty() && t[i] - t[fixes.get(fixes.size() - 1)] >= usual)) {
                fixes.add(i);
            }
        }
        return fixes.stream().mapToInt(Integer::intValue).toArray();
    }
}
