package bagward.demo;

import bagward.climate.Light;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** The payloads of the demo sensors: each gateway words the same things in its own way. */
final class Payloads {
    private Payloads() {}

    /** Nested JSON in °C and %RH with an ISO 8601 time. */
    static String nestedJson(Instant at, AirSample shown) {
        return text(
                "{\"measured\":\"%s\",\"air\":{\"celsius\":%.2f,\"humidity\":%.1f},\"battery\":87}",
                at.truncatedTo(ChronoUnit.SECONDS), shown.celsius(), shown.percent());
    }

    /** Flat JSON in °F and as a ratio with Unix seconds. */
    static String fahrenheitJson(Instant at, AirSample shown) {
        return text(
                "{\"epoch\":%d,\"t_f\":%.2f,\"rh\":%.4f}",
                at.getEpochSecond(), shown.celsius() * 1.8 + 32, Math.min(1.03, shown.percent() / 100));
    }

    /** SenML in Cel and %RH. */
    static String senMl(String baseName, Instant at, AirSample shown) {
        return text(
                "[{\"bn\":\"%s:\",\"bt\":%d,\"n\":\"temperature\",\"u\":\"Cel\",\"v\":%.2f},"
                        + "{\"n\":\"humidity\",\"u\":\"%%RH\",\"v\":%.1f}]",
                baseName, at.getEpochSecond(), shown.celsius(), shown.percent());
    }

    /** SenML in kelvin and as a ratio. */
    static String senMlKelvin(String baseName, Instant at, AirSample shown) {
        return text(
                "[{\"bn\":\"%s:\",\"bt\":%d,\"n\":\"temperature\",\"u\":\"K\",\"v\":%.2f},"
                        + "{\"n\":\"humidity\",\"u\":\"/\",\"v\":%.4f}]",
                baseName, at.getEpochSecond(), shown.celsius() + 273.15, shown.percent() / 100);
    }

    /** JSON with illuminance and Unix milliseconds. */
    static String lux(Instant at, AirSample shown) {
        return text("{\"ms\":%d,\"lux\":%.0f}", at.toEpochMilli(), shown.globalLight() * Light.LUX_PER_GLOBAL_WATT);
    }

    /** JSON with global light and an ISO 8601 time. */
    static String watts(Instant at, AirSample shown) {
        return text(
                "{\"time\":\"%s\",\"radiation\":[{\"global\":%.1f}]}",
                at.truncatedTo(ChronoUnit.SECONDS), shown.globalLight());
    }

    /** JSON with photosynthetic light and Unix milliseconds. */
    static String photons(Instant at, AirSample shown) {
        return text(
                "{\"ms\":%d,\"ppfd\":%.1f}", at.toEpochMilli(), shown.globalLight() * Light.MICROMOLES_PER_GLOBAL_WATT);
    }

    /** Nothing but the temperature in °C: a message without a time of its own. */
    static String bareCelsius(Instant at, AirSample shown) {
        return text("%.2f", shown.celsius());
    }

    /** JSON without any value: what a sensor says whose battery is nearly empty. */
    static String weakBattery(Instant at) {
        return text("{\"epoch\":%d,\"error\":\"battery low\"}", at.getEpochSecond());
    }

    private static String text(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }
}
