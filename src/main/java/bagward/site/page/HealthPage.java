package bagward.site.page;

import bagward.site.api.HealthAnswer;
import bagward.site.view.Fact;
import bagward.site.view.Words;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How the watch itself runs, for people.
 *
 * @param well whether all of it works
 * @param parts each part, those in trouble first
 * @param facts what came in, and how old the newest of it is
 */
public record HealthPage(boolean well, List<Line> parts, List<Fact> facts) {
    /**
     * A part of the program.
     *
     * @param name in words
     * @param well whether it works
     * @param says one sentence
     */
    public record Line(String name, boolean well, String says) {}

    /** The page of a state, looked at now. */
    public static HealthPage of(HealthAnswer health, Instant now) {
        List<Line> parts = health.parts().stream()
                .map(part -> new Line(Words.sentence(part.name()), part.well(), Words.sentence(part.says())))
                .sorted((one, other) -> Boolean.compare(one.well(), other.well()))
                .toList();
        return new HealthPage(health.well(), parts, facts(health, now));
    }

    private static List<Fact> facts(HealthAnswer health, Instant now) {
        return List.of(
                new Fact("Newest message", age(health.lastMessageAt(), now)),
                new Fact("Newest board", age(health.lastTick(), now) + ", made in " + health.lastTickMillis() + " ms"),
                new Fact("New readings since the start", Words.count(health.readingsStored(), "reading", "readings")),
                new Fact("Came again", Words.count(health.readingsRepeated(), "reading", "readings") + ", stored once"),
                new Fact(
                        "Came with another value",
                        Words.count(health.readingsContradicted(), "reading", "readings")
                                + ", the higher value kept, the other in quarantine"),
                new Fact(
                        "Wait for their store",
                        Words.count(health.readingsWaiting(), "reading", "readings") + ", "
                                + Words.whole(health.spoolPercent()) + " % of the room"),
                new Fact(
                        "No room for",
                        Words.count(health.messagesLost(), "message", "messages")
                                + " sent without asking for a receipt"),
                new Fact("In quarantine", Words.count(health.quarantined(), "message", "messages")));
    }

    private static String age(Optional<Instant> at, Instant now) {
        return at.map(then -> then.isAfter(now) ? Duration.ZERO : Duration.between(then, now))
                .map(age -> Words.span(age) + " ago")
                .orElse("none since the start");
    }
}
