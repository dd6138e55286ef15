package bagward.notify;

import bagward.message.Parcel;
import java.net.URI;
import java.time.ZoneId;
import java.util.Optional;

/**
 * A parcel as it goes out.
 *
 * @param parcel the parcel
 * @param station name of the station
 * @param zone zone of times for people
 * @param answer address of the page that confirms its alarms; empty if there is nothing to confirm, or no address under
 *     which people reach the pages is configured
 */
public record Outgoing(Parcel parcel, String station, ZoneId zone, Optional<URI> answer) {}
