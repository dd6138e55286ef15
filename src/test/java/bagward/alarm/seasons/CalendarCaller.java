package bagward.alarm.seasons;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;

/** The calendar alone: a look at eight in the morning of a day after the bag was put on, whatever the weather. */
record CalendarCaller(int day) implements Caller {
    @Override
    public Optional<Instant> firstCall(MouldSeason season, SeasonBag bag) {
        return Optional.of(bag.putOn()
                        .atOffset(ZoneOffset.UTC)
                        .toLocalDate()
                        .plusDays(day)
                        .atTime(8, 0)
                        .toInstant(ZoneOffset.UTC))
                .filter(look -> !look.isAfter(bag.takenOff()));
    }

    @Override
    public String name() {
        return "calendar, day " + day;
    }
}
