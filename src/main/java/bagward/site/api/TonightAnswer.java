package bagward.site.api;

import bagward.bag.BagOutlook;
import bagward.bag.Outlook;
import bagward.bag.OutlookSkill;
import bagward.bag.WetHours;
import bagward.board.BagView;
import bagward.board.Board;
import bagward.board.HouseView;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is to be expected until the next morning, in the interface.
 *
 * @param at the time the board was made for
 * @param zone zone of the station; all times here are UTC
 * @param houses in walking order
 * @param bags bags that are on, in walking order; those of houses without an outlook are left out
 */
public record TonightAnswer(Instant at, String zone, List<HouseTonight> houses, List<BagTonight> bags) {
    /**
     * A house.
     *
     * @param house its short name
     * @param why there is no outlook; empty if there is one
     * @param issuedAt the full hour it was made for; empty without one
     * @param wetHours hours with 95 %RH or more
     * @param temperatureSkill how past outlooks did, K
     * @param humiditySkill the same, %RH
     * @param hours one for each hour to the morning
     */
    public record HouseTonight(
            String house,
            Optional<String> why,
            Optional<Instant> issuedAt,
            Optional<WetHours> wetHours,
            Optional<OutlookSkill> temperatureSkill,
            Optional<OutlookSkill> humiditySkill,
            List<HourAnswer> hours) {
        static HouseTonight of(HouseView view) {
            String id = view.house().id().value();
            if (view.tonight() instanceof Outlook.Night night) {
                return new HouseTonight(
                        id,
                        Optional.empty(),
                        Optional.of(night.issuedAt()),
                        Optional.of(night.wetHours()),
                        Optional.of(night.temperatureSkill()),
                        Optional.of(night.humiditySkill()),
                        HourAnswer.of(night.temperature(), night.humidity()));
            }
            return new HouseTonight(
                    id,
                    Optional.of(((Outlook.None) view.tonight()).because()),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of());
        }
    }

    /**
     * A bag.
     *
     * @param tag code of its head
     * @param house short name of its house
     * @param issuedAt the full hour the outlook was made for
     * @param wetHours hours with 95 %RH or more
     * @param hours one for each hour to the morning
     */
    public record BagTonight(String tag, String house, Instant issuedAt, WetHours wetHours, List<HourAnswer> hours) {
        static Stream<BagTonight> of(BagView bag) {
            return bag.tonight().stream().map(outlook -> of(bag, outlook));
        }

        private static BagTonight of(BagView bag, BagOutlook outlook) {
            return new BagTonight(
                    bag.head().tag().value(),
                    bag.head().spot().house().value(),
                    outlook.issuedAt(),
                    outlook.wet(),
                    HourAnswer.of(
                            outlook.climate().temperature(), outlook.climate().humidity()));
        }
    }

    /**
     * The answer for a board.
     *
     * @param house short name of the only house that is wanted; empty for all
     * @param tag the only head that is wanted; empty for all
     */
    public static TonightAnswer of(Board board, Optional<String> house, Optional<String> tag) {
        return new TonightAnswer(
                board.at(),
                board.zone().getId(),
                board.houses().stream()
                        .map(HouseTonight::of)
                        .filter(night -> house.map(night.house()::equals).orElse(true))
                        .toList(),
                board.bags().stream()
                        .flatMap(BagTonight::of)
                        .filter(night -> house.map(night.house()::equals).orElse(true))
                        .filter(night -> tag.map(night.tag()::equalsIgnoreCase).orElse(true))
                        .toList());
    }
}
