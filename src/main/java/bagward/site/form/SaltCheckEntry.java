package bagward.site.form;

import bagward.climate.ReadingSource;
import bagward.climate.RestedReading;
import bagward.climate.SaltCheck;
import bagward.climate.SaturatedSalt;
import bagward.fault.ImpossibleValueException;
import bagward.fault.RefusedInputException;
import bagward.station.Sensor;
import bagward.units.Celsius;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/** Reads the check of a humidity sensor from the form of its page; what the sensor read is looked up, not typed. */
public final class SaltCheckEntry {
    private SaltCheckEntry() {}

    /**
     * The check that a form describes.
     *
     * @param fields of each of the two points, {@code low} and {@code high}: {@code salt_} (name of the salt), {@code at_} (the
     *     end of its rest over the salt) and {@code celsius_} (temperature, may be left out)
     * @param sensor the sensor that was checked
     * @param raw readings as they were stored
     * @throws RefusedInputException with every fault of the fields
     */
    public static SaltCheck read(Fields fields, Sensor sensor, ReadingSource raw) {
        Optional<SaltCheck.Point> low = point(fields, "low", sensor, raw);
        Optional<SaltCheck.Point> high = point(fields, "high", sensor, raw);
        fields.check();
        Instant later = later(
                fields.time("at_low").orElseThrow(), fields.time("at_high").orElseThrow());
        try {
            return new SaltCheck(sensor.id(), later, low.orElseThrow(), high.orElseThrow());
        } catch (ImpossibleValueException impossible) {
            fields.refuse("salt_low", impossible.getMessage());
            fields.check();
            throw impossible;
        }
    }

    private static Optional<SaltCheck.Point> point(Fields fields, String name, Sensor sensor, ReadingSource raw) {
        Optional<SaturatedSalt> salt = fields.needed("salt_" + name, SaltCheckEntry::salt);
        Optional<Instant> at = fields.time("at_" + name);
        Optional<Celsius> stated = fields.optional("celsius_" + name, SaltCheckEntry::celsius);
        if (salt.isEmpty() || at.isEmpty()) {
            return Optional.empty();
        }
        try {
            RestedReading rest = RestedReading.before(raw, sensor.id(), sensor.expectedEvery(), at.get(), stated);
            SaltCheck.Point point = new SaltCheck.Point(salt.get(), rest.temperature(), rest.humidity());
            point.truth();
            return Optional.of(point);
        } catch (ImpossibleValueException notAtRest) {
            fields.refuse("at_" + name, notAtRest.getMessage());
            return Optional.empty();
        }
    }

    private static SaturatedSalt salt(String name) {
        return SaturatedSalt.valueOf(name.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private static Celsius celsius(String text) {
        try {
            return new Celsius(Double.parseDouble(text.replace(',', '.')));
        } catch (NumberFormatException noNumber) {
            throw new ImpossibleValueException("‘" + text + "’ is no temperature: give °C as a number, such as 21.5");
        }
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }
}
