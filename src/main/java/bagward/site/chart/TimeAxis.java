package bagward.site.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Labels of a time axis in local time: every few hours on short spans, days on long ones. */
final class TimeAxis {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d", Locale.ENGLISH);
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final double ROOM = 58;

    private TimeAxis() {}

    static List<Panel.Label> labels(Frame frame, ZoneId zone, double y) {
        double hours = Duration.between(frame.from(), frame.to()).toMinutes() / 60.0;
        int step = step(hours * ROOM / frame.width());
        List<Panel.Label> labels = new ArrayList<>();
        ZonedDateTime day = frame.from().atZone(zone).toLocalDate().atStartOfDay(zone);
        while (day.toInstant().isBefore(frame.to())) {
            if (step <= 24 || day.toLocalDate().toEpochDay() % (step / 24) == 0) {
                addDay(labels, frame, day, step, y);
            }
            day = day.plusDays(1);
        }
        return labels;
    }

    private static void addDay(List<Panel.Label> labels, Frame frame, ZonedDateTime day, int step, double y) {
        for (int hour = 0; hour < 24; hour += step) {
            ZonedDateTime local = day.withHour(hour);
            Instant at = local.toInstant();
            if (!at.isBefore(frame.from()) && !at.isAfter(frame.to())) {
                String text = hour == 0 ? DAY.format(local) : HOUR.format(local);
                labels.add(new Panel.Label(frame.x(at), y, text));
            }
        }
    }

    private static int step(double hours) {
        for (int step : new int[] {1, 2, 3, 6, 12, 24, 48}) {
            if (step >= hours) {
                return step;
            }
        }
        return 96;
    }
}
