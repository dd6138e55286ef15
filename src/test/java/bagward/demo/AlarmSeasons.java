package bagward.demo;

import bagward.alarm.Priority;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.alarm.RulesReader;
import bagward.alarm.Subject;
import bagward.bag.BagMaterial;
import bagward.bag.BagMaterialsReader;
import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.OpenData;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.Register;
import bagward.bag.RegisterChange;
import bagward.bag.RegisterRules;
import bagward.bag.SimulatedSeason;
import bagward.bag.TagCode;
import bagward.board.BagDays;
import bagward.board.BoardInputs;
import bagward.board.Rehearsal;
import bagward.board.RehearsedAlarm;
import bagward.climate.Climate;
import bagward.climate.Reading;
import bagward.climate.RegularSeries;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.climate.SortedReadings;
import bagward.demo.physics.HouseAir;
import bagward.document.Inspection;
import bagward.document.Section;
import bagward.mould.Crops;
import bagward.mould.CropsReader;
import bagward.mould.OrganismsReader;
import bagward.mould.StorageReader;
import bagward.station.Bay;
import bagward.station.BayId;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.station.Sensor;
import bagward.station.Spot;
import bagward.station.Station;
import bagward.units.Quantity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Rehearses rules on invented springs, cool ones of the demo's physics (two houses) and sunny ones of the simulator of the bag
 * tests (one bright house), and on the open data if BAGWARD_OPEN_DATA names their folder: alarms a day for 100 bags, by rule. An
 * ordinary spring is the mean of both kinds. In each house hang about fifty bags at any time, each for seven days, every tenth
 * for two or three days more. Three bags, one of each material, stand for the seven that are put on in a morning: the estimates of
 * bags of one material that were put on within an hour do not differ. Nobody acts on an alarm. Arguments: first seed, number of
 * springs of each kind, then files of rules.
 */
final class AlarmSeasons {
    private static final Instant BEGIN = Instant.parse("2026-03-15T00:00:00Z");
    private static final int RUN_UP_DAYS = 28;
    private static final int DAYS = 28;
    private static final int BAGS_A_DAY = 3;
    private static final double STAND_FOR = 7.0 / BAGS_A_DAY;
    private static final int SPOTS = 400;
    static final List<String> MATERIALS = List.of("soft-nonwoven", "paper", "film-half-mm");

    private final Map<MaterialId, BagMaterial> materials = new HashMap<>();
    private final Map<RuleId, Double> raised = new TreeMap<>();
    private final DoubleSummaryStatistics pressing = new DoubleSummaryStatistics();
    private double bagDays;

    private AlarmSeasons() throws IOException {
        Inspection inspection = new Inspection();
        BagMaterialsReader.read(Section.parse("bag-materials.yaml", text("bag-materials.yaml"), inspection))
                .forEach(material -> materials.put(material.id(), material));
        inspection.throwIfRefused();
    }

    /** Prints a table for each file. */
    public static void main(String[] args) throws IOException {
        long from = Long.parseLong(args[0]);
        int springs = Integer.parseInt(args[1]);
        for (String file : List.of(args).subList(2, args.length)) {
            List<Rule> rules = rules(Files.readString(Path.of(file)));
            AlarmSeasons cool = new AlarmSeasons();
            AlarmSeasons sunny = new AlarmSeasons();
            for (long seed = from; seed < from + springs; seed++) {
                cool.spring(seed, rules);
                Climate house = new SimulatedSeason(seed, RUN_UP_DAYS + DAYS).houseBySensor();
                sunny.rehearse(sunny.readings(house), Duration.ofDays(RUN_UP_DAYS), List.of("house"), rules);
            }
            AlarmSeasons real = new AlarmSeasons();
            Optional<OpenData> open = OpenData.whole();
            if (open.isPresent()) {
                real.rehearse(real.readings(open.get().house()), Duration.ofDays(14), List.of("house"), rules);
            }
            print(file, rules, cool, sunny, real);
        }
    }

    private void spring(long seed, List<Rule> rules) throws IOException {
        DemoWorld world = new DemoWorld(seed, BEGIN.minusSeconds(60));
        Random random = new Random(seed);
        List<Reading> readings = new ArrayList<>();
        for (int minute = 0; minute < (RUN_UP_DAYS + DAYS) * 1440; minute++) {
            Instant at = BEGIN.plusSeconds(60L * minute);
            world.runTo(at);
            if (minute % 2 == 0) {
                heard(readings, "linden", world.linden(), at.plusSeconds(5), random);
                heard(readings, "alder", world.alder(), at.plusSeconds(26), random);
            }
        }
        rehearse(readings, Duration.ofDays(RUN_UP_DAYS), List.of("linden", "alder"), rules);
    }

    private static void heard(List<Reading> readings, String house, HouseAir air, Instant at, Random random) {
        AirSample sample = AirSample.of(air);
        double percent = sample.percent() + 0.8 * random.nextGaussian();
        reading(readings, house, Quantity.TEMPERATURE, at, sample.celsius() + 0.1 * random.nextGaussian());
        reading(readings, house, Quantity.HUMIDITY, at, percent);
        reading(readings, house, Quantity.LIGHT, at, sample.globalLight() * 2.0565);
    }

    private static void reading(List<Reading> readings, String house, Quantity quantity, Instant at, double value) {
        double inside = Math.max(quantity.lowest(), Math.min(quantity.highest(), value));
        readings.add(Reading.of(new SeriesId(new SensorId(house), quantity), at, inside));
    }

    private List<Reading> readings(Climate house) {
        List<Reading> readings = new ArrayList<>();
        series(readings, Quantity.TEMPERATURE, house.temperature());
        series(readings, Quantity.HUMIDITY, house.humidity());
        series(readings, Quantity.LIGHT, house.light());
        return readings;
    }

    private static void series(List<Reading> readings, Quantity quantity, RegularSeries series) {
        for (int i = 0; i < series.grid().size(); i++) {
            if (series.known(i)) {
                reading(readings, "house", quantity, series.grid().at(i), series.valueOrNaN(i));
            }
        }
    }

    private void rehearse(List<Reading> readings, Duration runUp, List<String> houses, List<Rule> rules)
            throws IOException {
        Instant begin = readings.get(0).measuredAt();
        Instant end = readings.stream()
                .map(Reading::measuredAt)
                .max(Instant::compareTo)
                .orElseThrow();
        Instant from = begin.plus(runUp);
        Station station = station(houses);
        Register register = new RegisterRules(station, materials.keySet())
                .apply(Register.EMPTY, bags(houses, from.minus(Duration.ofDays(7)), end));
        List<SeriesId> series = station.sensors().stream()
                .flatMap(sensor -> sensor.series().stream())
                .toList();
        BoardInputs in = new BoardInputs(
                end,
                station,
                register,
                materials,
                SortedReadings.of(series, new bagward.board.HeldReadings().take(readings), begin, end),
                rules,
                OrganismsReader.parse("organisms.yaml", text("organisms.yaml")),
                Crops.only(
                        CropsReader.parse("crops.yaml", text("crops.yaml")).get(0),
                        StorageReader.parse("storage.yaml", text("storage.yaml"))));
        Rehearsal rehearsal = new Rehearsal(in, from, Duration.ofMinutes(10));
        List<RehearsedAlarm> alarms = new ArrayList<>();
        rehearsal.heads().forEach(head -> alarms.addAll(rehearsal.of(head)));
        alarms.addAll(rehearsal.ofHouses());
        double days = BagDays.between(register, from, end) * STAND_FOR;
        bagDays += days;
        Set<RuleId> low = rules.stream()
                .filter(rule -> rule.priority() == Priority.LOW)
                .map(Rule::id)
                .collect(Collectors.toSet());
        double calls = 0;
        for (RehearsedAlarm alarm : alarms) {
            double weight = alarm.key().subject() instanceof Subject.InHouse ? 1 : STAND_FOR;
            raised.merge(alarm.key().rule(), weight, Double::sum);
            calls += low.contains(alarm.key().rule()) ? 0 : weight;
        }
        pressing.accept(100 * calls / days);
    }

    private static Station station(List<String> names) {
        List<House> houses = names.stream()
                .map(name -> new House(new HouseId(name), name, List.of(new Bay(new BayId("a"), "a", SPOTS, 10))))
                .toList();
        List<Sensor> sensors = names.stream()
                .map(name -> new Sensor(
                        new SensorId(name),
                        name,
                        new HouseId(name),
                        Optional.empty(),
                        false,
                        EnumSet.of(Quantity.TEMPERATURE, Quantity.HUMIDITY, Quantity.LIGHT),
                        Duration.ofMinutes(names.size() > 1 ? 2 : 5)))
                .toList();
        return new Station("invented", 54.12, 10.35, 31, DemoStation.ZONE, houses, sensors);
    }

    private static List<RegisterChange> bags(List<String> houses, Instant from, Instant end) {
        List<RegisterChange> changes = new ArrayList<>();
        int number = 0;
        int dayNumber = 0;
        for (Instant day = from; day.plus(Duration.ofDays(11)).isBefore(end); day = day.plus(Duration.ofDays(1))) {
            dayNumber++;
            for (String house : houses) {
                for (int i = 0; i < BAGS_A_DAY; i++, number++) {
                    Instant putOn = day.plusSeconds(8 * 3600L + 600L * i);
                    int late = number % 10 == 9 ? 2 + number / 10 % 2 : 0;
                    TagCode tag = new TagCode("T-" + number);
                    changes.add(new RegisterChange.PutOn(
                            tag,
                            putOn,
                            new Spot(new HouseId(house), new BayId("a"), 1 + (dayNumber * BAGS_A_DAY + i) % SPOTS),
                            new MaterialId(MATERIALS.get(number % MATERIALS.size())),
                            new Line("P 1"),
                            new Line("P 2"),
                            new Pollination(putOn, "nobody", PollinationKind.CROSS, 9, Optional.empty())));
                    changes.add(new RegisterChange.TakeOff(tag, putOn.plus(Duration.ofDays(7L + late))));
                }
            }
        }
        return changes;
    }

    private double rate(Rule rule) {
        return bagDays == 0 ? 0 : 100.0 * raised.getOrDefault(rule.id(), 0.0) / bagDays;
    }

    private static void print(String file, List<Rule> rules, AlarmSeasons cool, AlarmSeasons sunny, AlarmSeasons real) {
        System.out.printf(
                Locale.ROOT,
                "%s: alarms a day for 100 bags in %.0f, %.0f and %.0f bag-days%n| rule | priority | cool | sunny | ordinary | open |%n",
                file,
                cool.bagDays,
                sunny.bagDays,
                real.bagDays);
        double[] sums = new double[4];
        for (Rule rule : rules) {
            double[] rates = {
                cool.rate(rule), sunny.rate(rule), (cool.rate(rule) + sunny.rate(rule)) / 2, real.rate(rule)
            };
            if (Arrays.stream(rates).sum() > 0) {
                line(rule.id() + " | " + rule.priority(), rates);
            }
            for (int i = 0; i < sums.length; i++) {
                sums[i] += rule.priority() == Priority.LOW ? 0 : rates[i];
            }
        }
        line("medium and high together | ", sums);
        System.out.printf(
                Locale.ROOT,
                "a single spring: cool %.1f to %.1f, sunny %.1f to %.1f%n",
                cool.pressing.getMin(),
                cool.pressing.getMax(),
                sunny.pressing.getMin(),
                sunny.pressing.getMax());
    }

    private static void line(String what, double... rates) {
        System.out.printf(
                Locale.ROOT, "| %s | %.2f | %.2f | %.2f | %.2f |%n", what, rates[0], rates[1], rates[2], rates[3]);
    }

    private static List<Rule> rules(String text) {
        Inspection inspection = new Inspection();
        Section top = Section.parse("rules.yaml", text, inspection);
        List<Rule> rules = RulesReader.read(top.sections("rules", 1));
        inspection.throwIfRefused();
        return rules;
    }

    private static String text(String name) throws IOException {
        return Files.readString(Path.of("seeds", name));
    }
}
