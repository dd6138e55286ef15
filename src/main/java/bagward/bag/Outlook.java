package bagward.bag;

import bagward.climate.Climate;
import java.time.Instant;

/** What can be said of a house until the next morning: something, or why nothing. */
public sealed interface Outlook {
    /** When it was made. */
    Instant issuedAt();

    /**
     * An outlook in hourly steps.
     *
     * @param issuedAt the full hour it was made for; nothing measured later is in it
     * @param temperature °C, with the interval that holds the truth in 80 of 100 hours
     * @param humidity %RH, likewise
     * @param expected the middles with the light of the last nights at each hour, as a climate
     * @param temperatureSkill how past outlooks of temperature did, K
     * @param humiditySkill how past outlooks of humidity did, %RH
     */
    record Night(
            Instant issuedAt,
            Banded temperature,
            Banded humidity,
            Climate expected,
            OutlookSkill temperatureSkill,
            OutlookSkill humiditySkill)
            implements Outlook {

        /** Hours with 95 %RH or more in the house. */
        public WetHours wetHours() {
            return WetHours.of(humidity);
        }
    }

    /**
     * No outlook.
     *
     * @param issuedAt when it was asked for
     * @param because one sentence that says why
     */
    record None(Instant issuedAt, String because) implements Outlook {}
}
