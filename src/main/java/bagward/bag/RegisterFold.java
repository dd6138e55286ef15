package bagward.bag;

import bagward.bag.RegisterChange.GiveBack;
import bagward.bag.RegisterChange.Harvest;
import bagward.bag.RegisterChange.Lend;
import bagward.bag.RegisterChange.Lose;
import bagward.bag.RegisterChange.NoteFlowers;
import bagward.bag.RegisterChange.PutOn;
import bagward.bag.RegisterChange.Swap;
import bagward.bag.RegisterChange.TakeOff;
import bagward.bag.RegisterChange.WithdrawFlowers;
import bagward.climate.SensorId;
import bagward.station.House;
import bagward.station.Sensor;
import bagward.station.Spot;
import bagward.station.Station;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** One pass over sorted changes: builds heads and loans and notes each breach of a rule. Used once, by one thread. */
final class RegisterFold {
    private final Station station;
    private final Set<MaterialId> materials;
    private final Set<CropId> crops;
    private final Map<Line, CropId> cropOfLine = new HashMap<>();
    private final SortedMap<TagCode, HeadLog> heads = new TreeMap<>();
    private final Set<TagCode> refusedHeads = new HashSet<>();
    private final Map<Spot, HeadLog> bagAtSpot = new HashMap<>();
    private final Map<SensorId, Lend> lentOut = new HashMap<>();
    private final List<SensorLoan> loans = new ArrayList<>();
    private final Breaches breaches = new Breaches();
    private final UsedBagFold usedBags = new UsedBagFold(heads, breaches);
    private final DryingFold drying;

    /** @param all every change that will be taken */
    RegisterFold(Station station, Set<MaterialId> materials, Set<CropId> crops, List<RegisterChange> all) {
        this.station = station;
        this.materials = materials;
        this.crops = crops;
        this.drying = new DryingFold(station, breaches, new WithdrawnEntries(all));
    }

    List<Breach> breaches() {
        return breaches.all();
    }

    Register register(List<RegisterChange> changes) {
        lentOut.values().forEach(l -> loans.add(new SensorLoan(l.sensor(), l.tag(), l.at(), Optional.empty())));
        loans.sort(Comparator.comparing(SensorLoan::from)
                .thenComparing(SensorLoan::tag)
                .thenComparing(SensorLoan::sensor));
        SortedMap<TagCode, Head> finished = new TreeMap<>();
        heads.forEach((tag, log) -> finished.put(tag, log.head()));
        return new Register(finished, loans, changes);
    }

    void take(RegisterChange change) {
        if (change instanceof PutOn putOn) {
            putOn(putOn);
            return;
        }
        HeadLog head = heads.get(change.tag());
        if (head == null) {
            unknownHead(change);
        } else if (DryingFold.takes(change)) {
            drying.take(head, change);
        } else if (head.ended()) {
            breach(change, head.lastBagChange(), "tag", change.tag(), "the head was harvested or lost by then", "");
        } else if (change instanceof Swap swap) {
            swap(head, swap);
        } else if (change instanceof TakeOff) {
            takeOff(head, change);
        } else if (change instanceof Lend lend) {
            lend(head, lend);
        } else if (change instanceof GiveBack back) {
            giveBack(back);
        } else if (change instanceof NoteFlowers note) {
            if (!head.flowers().add(note.sign(), note.at())) {
                breach(
                        change,
                        change,
                        "time",
                        note.at(),
                        "this was noted for that very time already",
                        "Give another minute");
            }
        } else if (change instanceof WithdrawFlowers withdraw) {
            if (!head.flowers().withdraw(withdraw.sign(), withdraw.at())) {
                breach(change, change, "time", withdraw.at(), "nothing of the kind was noted for that time", "");
            }
        } else if (change instanceof Harvest harvest) {
            end(head, change, new Ending(harvest.at(), HeadState.HARVESTED, harvest.note()));
        } else if (change instanceof Lose lose) {
            end(head, change, new Ending(lose.at(), HeadState.LOST, lose.note()));
        }
    }

    private void putOn(PutOn change) {
        int before = breaches.count();
        HeadLog sameTag = heads.get(change.tag());
        if (sameTag != null) {
            breach(
                    change,
                    sameTag.start(),
                    "tag",
                    change.tag(),
                    "a tag code is used once",
                    "Take a tag with a new code");
            return;
        }
        checkPlace(change);
        checkMaterial(change, change.material());
        checkCrop(change);
        checkPollination(change);
        Optional<BagUse> used = usedBags.take(change, change.material(), change.before());
        if (breaches.count() > before) {
            refusedHeads.add(change.tag());
            return;
        }
        change.crop().ifPresent(crop -> cropOfLine.put(change.seedParent(), crop));
        HeadLog head = new HeadLog(change, Optional.ofNullable(cropOfLine.get(change.seedParent())), used);
        heads.put(change.tag(), head);
        bagAtSpot.put(change.spot(), head);
    }

    private void checkPlace(PutOn change) {
        HeadLog there = bagAtSpot.get(change.spot());
        if (station.findHouse(change.spot().house()).filter(House::isForDrying).isPresent()) {
            breach(
                    change,
                    change,
                    "spot",
                    change.spot(),
                    "seed dries there, and no bags are put on in a drying place",
                    "Give a spot of a house with bays");
        } else if (!station.has(change.spot())) {
            breach(change, change, "spot", change.spot(), "the station has no such spot", "See the bench plan");
        } else if (there != null) {
            breach(
                    change,
                    there.lastBagChange(),
                    "spot",
                    change.spot(),
                    "the bag of head " + there.start().tag() + " hangs there at that time",
                    "Take that bag off first or give another spot");
        }
    }

    private void checkMaterial(RegisterChange change, MaterialId material) {
        if (!materials.contains(material)) {
            breach(change, change, "material", material, "known are: " + sorted(materials), "");
        }
    }

    private void checkCrop(PutOn change) {
        change.crop()
                .filter(crop -> !crops.contains(crop))
                .ifPresent(crop -> breach(change, change, "crop", crop, "known are: " + sorted(crops), ""));
    }

    private static String sorted(Set<?> names) {
        return names.stream().map(Object::toString).sorted().collect(Collectors.joining(", "));
    }

    private void checkPollination(PutOn change) {
        Pollination done = change.pollination();
        if (done.at().isAfter(change.at())) {
            breach(change, change, "pollination", done.at(), "the head is pollinated before the bag is put on", "");
        }
        boolean sameLine = change.seedParent().equals(change.pollenParent());
        if (done.kind() == PollinationKind.SELF && !sameLine) {
            breach(change, change, "pollen_parent", change.pollenParent(), "a self has equal parents", "");
        } else if (done.kind() == PollinationKind.CROSS && sameLine) {
            breach(change, change, "pollen_parent", change.pollenParent(), "a cross has two different parents", "");
        }
    }

    private void unknownHead(RegisterChange change) {
        if (!refusedHeads.contains(change.tag())) {
            breach(
                    change,
                    change,
                    "tag",
                    change.tag(),
                    "no bag was put on a head with this tag before " + change.at(),
                    "Check the code and the time");
        }
    }

    private void swap(HeadLog head, Swap change) {
        int before = breaches.count();
        checkMaterial(change, change.material());
        Optional<BagUse> used = usedBags.take(change, change.material(), change.before());
        if (bagOnSinceBefore(head, change) && breaches.count() == before) {
            head.takeOff(change);
            head.putOn(change, change.material(), used);
        }
    }

    private void takeOff(HeadLog head, RegisterChange change) {
        if (bagOnSinceBefore(head, change)) {
            head.takeOff(change);
            clear(head, change.at());
        }
    }

    private void end(HeadLog head, RegisterChange change, Ending ending) {
        head.end(change, ending);
        clear(head, change.at());
    }

    private void clear(HeadLog head, Instant at) {
        bagAtSpot.remove(head.start().spot(), head);
        List<Lend> inThisBag = lentOut.values().stream()
                .filter(l -> l.tag().equals(head.start().tag()))
                .toList();
        inThisBag.forEach(lend -> close(lend, at));
    }

    private boolean bagOnSinceBefore(HeadLog head, RegisterChange change) {
        if (!head.bagged()) {
            breach(change, head.lastBagChange(), "tag", change.tag(), "no bag is on this head at that time", "");
            return false;
        }
        if (!change.at().isAfter(head.newestPutOn())) {
            breach(change, head.lastBagChange(), "time", change.at(), "the bag was put on at that very time", "");
            return false;
        }
        return true;
    }

    private void lend(HeadLog head, Lend change) {
        Optional<Sensor> sensor = station.findSensor(change.sensor());
        Lend elsewhere = lentOut.get(change.sensor());
        Optional<Lend> other = lentOut.values().stream()
                .filter(l -> l.tag().equals(change.tag()))
                .findFirst();
        if (sensor.isEmpty()) {
            breach(change, change, "sensor", change.sensor(), "the station has no such sensor", "");
        } else if (!sensor.get().spare()) {
            breach(change, change, "sensor", change.sensor(), "only a spare sensor can be lent to a bag", "");
        } else if (elsewhere != null) {
            String where = "it hangs in the bag of head " + elsewhere.tag() + " at that time";
            breach(change, elsewhere, "sensor", change.sensor(), where, "Take it out there first");
        } else if (!head.bagged()) {
            breach(change, head.lastBagChange(), "tag", change.tag(), "no bag is on this head at that time", "");
        } else if (other.isPresent()) {
            String has = "sensor " + other.get().sensor() + " hangs in this bag at that time";
            breach(change, other.get(), "sensor", change.sensor(), has, "Take it out first");
        } else {
            lentOut.put(change.sensor(), change);
        }
    }

    private void giveBack(GiveBack change) {
        Lend lend = lentOut.get(change.sensor());
        if (lend == null || !lend.tag().equals(change.tag())) {
            breach(
                    change,
                    change,
                    "sensor",
                    change.sensor(),
                    "it does not hang in the bag of head " + change.tag() + " at that time",
                    "");
        } else {
            close(lend, change.at());
        }
    }

    private void close(Lend lend, Instant at) {
        lentOut.remove(lend.sensor());
        loans.add(new SensorLoan(lend.sensor(), lend.tag(), lend.at(), Optional.of(at)));
    }

    private void breach(
            RegisterChange change, RegisterChange against, String field, Object found, String rule, String remedy) {
        breaches.add(change, against, field, found, rule, remedy);
    }
}
