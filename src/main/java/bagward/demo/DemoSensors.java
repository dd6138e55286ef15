package bagward.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

/** The sensors of the demo station; their counterpart is the list in demo-data/demo.yaml. */
final class DemoSensors {
    private DemoSensors() {}

    /** Every sensor, among them the one that the configuration does not know. */
    static List<DemoSensor> all() {
        return Stream.of(linden(), alder(), spares(), strangers(), seedRoom())
                .flatMap(List::stream)
                .toList();
    }

    private static List<DemoSensor> linden() {
        return List.of(
                DemoSensor.always(
                        "linden-air",
                        5,
                        w -> AirSample.of(w.linden()),
                        SensorNature.usual(0.1, -0.5),
                        Payloads::nestedJson),
                DemoSensor.always(
                        "linden-light", 9, w -> AirSample.of(w.linden()), SensorNature.usual(0, 0), Payloads::lux),
                DemoSensor.always(
                        "linden-b-air",
                        14,
                        w -> AirSample.of(w.lindenB()),
                        SensorNature.usual(-0.1, 0.8),
                        (at, shown) -> Payloads.senMl("linden-b", at, shown)),
                DemoSensor.always(
                                "linden-c-air",
                                21,
                                w -> AirSample.of(w.lindenC()),
                                SensorNature.usual(0.2, -0.4),
                                DemoSensors::withWeakBattery)
                        .silentFrom(DemoStation.FALLS_SILENT));
    }

    private static List<DemoSensor> alder() {
        return List.of(
                DemoSensor.always(
                        "alder-air",
                        26,
                        w -> AirSample.of(w.alder()),
                        SensorNature.usual(-0.1, 0.5),
                        (at, shown) -> Payloads.senMlKelvin("alder", at, shown)),
                DemoSensor.always(
                        "alder-light", 31, w -> AirSample.of(w.alder()), SensorNature.usual(0, 0), Payloads::watts),
                DemoSensor.always(
                        "alder-a-light",
                        36,
                        w -> AirSample.of(w.alderA()),
                        SensorNature.usual(0, 0),
                        Payloads::photons),
                DemoSensor.always(
                        "alder-b-air",
                        40,
                        w -> AirSample.of(w.alderB()),
                        SensorNature.usual(0.1, 0.3),
                        Payloads::nestedJson),
                DemoSensor.always(
                                "alder-door",
                                44,
                                w -> AirSample.of(w.alder()),
                                SensorNature.usual(-0.2, 0),
                                Payloads::bareCelsius)
                        .speakingFrom(DemoStation.NOW));
    }

    private static List<DemoSensor> spares() {
        return List.of(
                DemoSensor.always(
                        "spare-1",
                        48,
                        DemoWorld::firstSpare,
                        SensorNature.usual(0.05, 0.6),
                        (at, shown) -> Payloads.senMl("spare-1", at, shown)),
                DemoSensor.always(
                        "spare-2", 52, DemoWorld::secondSpare, SensorNature.usual(-0.1, -0.3), Payloads::nestedJson),
                DemoSensor.always(
                        "spare-3",
                        56,
                        w -> AirSample.of(w.linden()),
                        SensorNature.usual(0, 0.2),
                        Payloads::nestedJson));
    }

    private static List<DemoSensor> strangers() {
        return List.of(DemoSensor.always(
                        "header-house",
                        58,
                        w -> AirSample.of(w.linden()),
                        SensorNature.usual(2, -12),
                        Payloads::bareCelsius)
                .speakingFrom(DemoStation.NOW));
    }

    /** Last in the list, so that the sensors before it err as they did before there was a seed room. */
    private static List<DemoSensor> seedRoom() {
        return List.of(DemoSensor.always(
                "seed-room-air",
                34,
                w -> AirSample.of(w.seedRoom()),
                SensorNature.usual(0.1, 0.4),
                Payloads::nestedJson));
    }

    /** The last words of a sensor before it falls silent: no values any more, which no collector can use. */
    private static String withWeakBattery(Instant at, AirSample shown) {
        Instant weak = DemoStation.FALLS_SILENT.minus(Duration.ofMinutes(8));
        return at.isBefore(weak) ? Payloads.fahrenheitJson(at, shown) : Payloads.weakBattery(at);
    }
}
