package bagward.bag;

import bagward.bag.RegisterChange.HangToDry;
import bagward.bag.RegisterChange.Pack;
import bagward.bag.RegisterChange.WithdrawDrying;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.station.Station;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The rules of seed lots: hung to dry after the harvest, packed while they hang. Used within one fold. */
final class DryingFold {
    private final Station station;
    private final Breaches breaches;
    private final WithdrawnEntries withdrawn;

    /** @param withdrawn entries that do not count */
    DryingFold(Station station, Breaches breaches, WithdrawnEntries withdrawn) {
        this.station = station;
        this.breaches = breaches;
        this.withdrawn = withdrawn;
    }

    /** Whether a change is one of a seed lot. */
    static boolean takes(RegisterChange change) {
        return change instanceof HangToDry || change instanceof Pack || change instanceof WithdrawDrying;
    }

    void take(HeadLog head, RegisterChange change) {
        if (change instanceof WithdrawDrying withdraw) {
            if (!withdrawn.answers(withdraw)) {
                breaches.add(change, change, "time", change.at(), "nothing of the kind was entered for that time", "");
            }
        } else if (withdrawn.of(change).isPresent()) {
            leaveOut(head, change, withdrawn.of(change).get());
        } else if (!head.harvested()) {
            String remedy = head.ended() ? "" : "Enter the harvest first";
            breaches.add(
                    change, head.lastBagChange(), "tag", change.tag(), "the head was not harvested by then", remedy);
        } else if (change instanceof HangToDry hung) {
            hang(head.drying(), hung);
        } else {
            pack(head.drying(), change);
        }
    }

    private void leaveOut(HeadLog head, RegisterChange change, WithdrawDrying withdraw) {
        head.drying().leaveOut(withdraw);
        if (!withdrawn.leaveOut(change)) {
            breaches.add(
                    change,
                    change,
                    "time",
                    change.at(),
                    "an entry for that very time was withdrawn",
                    "Give another minute");
        }
    }

    private void hang(DryingLog drying, HangToDry change) {
        boolean unknown = change.house()
                .filter(house ->
                        station.findHouse(house).filter(House::isForDrying).isEmpty())
                .isPresent();
        boolean there = drying.hangs()
                .filter(hung -> hung.house().equals(change.house()))
                .isPresent();
        String place = change.house().map(HouseId::value).orElse("elsewhere");
        if (unknown) {
            breaches.add(
                    change, change, "place", place, "it is no drying place of the station", "Known are: " + known());
        } else if (there) {
            breaches.add(change, drying.last().orElse(change), "place", place, "it hangs there already", "");
        } else {
            drying.add(change);
        }
    }

    private String known() {
        return Stream.concat(station.drying().stream().map(house -> house.id().value()), Stream.of("elsewhere"))
                .collect(Collectors.joining(", "));
    }

    private void pack(DryingLog drying, RegisterChange change) {
        if (drying.hangs().isEmpty()) {
            breaches.add(
                    change,
                    drying.last().orElse(change),
                    "tag",
                    change.tag(),
                    "the lot does not hang to dry at that time",
                    "Enter first when it was hung; a place elsewhere will do");
        } else {
            drying.add(change);
        }
    }
}
