package bagward.demo;

import bagward.demo.physics.BagAir;
import bagward.demo.physics.BagDesign;
import bagward.demo.physics.BagModel;
import bagward.demo.physics.DryingRoom;
import bagward.demo.physics.HouseAir;
import bagward.demo.physics.HouseDesign;
import bagward.demo.physics.HouseModel;
import bagward.demo.physics.Weather;
import bagward.demo.physics.WeatherMaker;
import java.time.Instant;

/** The two houses of the demo, its seed room, and the two bags in which a spare sensor hangs, minute by minute. */
final class DemoWorld {
    private static final double MINUTE = 60;
    private static final HouseDesign LINDEN = new HouseDesign(0.55, 15.5, 12.5, 17.5, 56, 90, 1.0, 0.02);
    private static final HouseDesign ALDER = new HouseDesign(0.52, 15, 12, 18, 65, 70, 1.6, 0.08);
    private static final BagDesign HALF_MM_FILM = new BagDesign(0.12, 0.002, 3e-5, 6e-5, 0.85, 0.12, 0.018, 0.06);
    private static final BagDesign ANOTHER_OF_THEM =
            new BagDesign(0.13, 0.0022, 3.6e-5, 6e-5, 0.83, 0.13, 0.017, 0.055);

    private final WeatherMaker weather;
    private final HouseModel linden = new HouseModel(LINDEN);
    private final HouseModel alder = new HouseModel(ALDER);
    private final BagModel steadyBag = new BagModel(ANOTHER_OF_THEM);
    private final BagModel fallingBag = new BagModel(HALF_MM_FILM);
    private final DryingRoom seedRoom = new DryingRoom();
    private boolean fallen;
    private Instant now;
    private Instant before;
    private HouseAir lindenAir;
    private HouseAir alderAir;
    private HouseAir seedRoomAir;
    private BagAir steadyBagAir;
    private BagAir fallingBagAir;

    /** A world that has run for one minute up to an instant. */
    DemoWorld(long seed, Instant start) {
        this.weather = new WeatherMaker(seed, DemoStation.SITE);
        this.before = start;
        advance(start);
    }

    /** Runs one minute, up to this instant. */
    void runTo(Instant at) {
        advance(at);
    }

    private void advance(Instant at) {
        now = at;
        happenInSeedRoom(at);
        if (!fallen && !at.isBefore(DemoStation.FALLS_SHUT)) {
            fallingBag.fallShut();
            fallen = true;
        }
        Weather outside = weather.next(at);
        lindenAir = linden.step(outside, MINUTE);
        alderAir = alder.step(outside, MINUTE);
        seedRoomAir = seedRoom.step(outside, MINUTE);
        steadyBagAir = steadyBag.step(lindenB(), MINUTE);
        fallingBagAir = fallingBag.step(alderA(), MINUTE);
    }

    private void happenInSeedRoom(Instant at) {
        if (between(DemoStation.FIRST_HUNG, at)) {
            seedRoom.hang(6, 5);
        }
        if (between(DemoStation.SECOND_HUNG, at)) {
            seedRoom.hang(20, 20);
        }
        if (between(DemoStation.DRYER_TRIPS, at)) {
            seedRoom.trip();
        }
        before = at;
    }

    /** Whether something happens after the last minute and up to this one. */
    private boolean between(Instant happens, Instant at) {
        return happens.isAfter(before) && !happens.isAfter(at);
    }

    /** The room in which harvested heads hang. */
    HouseAir seedRoom() {
        return seedRoomAir;
    }

    /** Middle of the linden house. */
    HouseAir linden() {
        return lindenAir;
    }

    /** Bay b of the linden house, beside the door. */
    HouseAir lindenB() {
        return lindenAir.corner(-0.3, 1.0);
    }

    /** Bay c of the linden house, below the heating main. */
    HouseAir lindenC() {
        return lindenAir.corner(0.5, 1.0);
    }

    /** Middle of the alder house. */
    HouseAir alder() {
        return alderAir;
    }

    /** Bay a of the alder house. */
    HouseAir alderA() {
        return alderAir.corner(0.1, 1.0);
    }

    /** Bay b of the alder house, beside the water tank: cooler and moister. */
    HouseAir alderB() {
        return alderAir.corner(-0.5, 1.03);
    }

    /** Where the first spare sensor is: on its hook in the linden house, then in the bag that hangs as it should. */
    AirSample firstSpare() {
        return now.isBefore(DemoStation.FIRST_LENT) ? AirSample.of(linden()) : AirSample.of(steadyBagAir);
    }

    /** Where the second spare sensor is: on its hook in the alder house, then in the bag that falls shut. */
    AirSample secondSpare() {
        return now.isBefore(DemoStation.SECOND_LENT) ? AirSample.of(alder()) : AirSample.of(fallingBagAir);
    }
}
