package bagward.bag;

import bagward.climate.Climate;
import bagward.climate.MoistAir;
import bagward.climate.TimeGrid;
import java.util.BitSet;

/** One run of the balance over a house climate, with the band of each cell. Used once, by one thread. */
final class BagEstimate {
    /** Share of outdoor light that reaches a bag under glass, and its standard deviation, where no light was measured. */
    private static final double UNMEASURED_LIGHT = 0.35;

    private static final double UNMEASURED_LIGHT_DEVIATION = 0.2;

    private final TimeGrid grid;
    private final double[] houseTemperature;
    private final double[] houseHumidity;
    private final double[] photons;
    private final Sky sky;
    private final BagBelief belief;
    private final SensorError sensor;
    private final BagBalance balance;
    private final ClosureBand byDay;
    private final ClosureBand byNight;
    private final BandArrays temperature;
    private final BandArrays humidity;
    private final FilmDoubt film;

    BagEstimate(Climate house, BagBelief belief, Sky sky, SensorError sensor) {
        this.grid = house.grid();
        this.houseTemperature = house.temperature().toArray();
        this.houseHumidity = house.humidity().toArray();
        this.photons = house.light().toArray();
        this.sky = sky;
        this.belief = belief;
        this.sensor = sensor;
        this.balance = new BagBalance(belief, grid.step().toSeconds() / 60.0);
        this.byDay = ClosureBand.of(belief.closureByDay());
        this.byNight = ClosureBand.of(belief.closureByNight());
        this.temperature = new BandArrays(grid.size());
        this.humidity = new BandArrays(grid.size());
        this.film = new FilmDoubt(belief.filmCooling());
    }

    BagClimate from(int first) {
        for (int i = first; i < grid.size(); i++) {
            cell(i);
        }
        return new BagClimate(
                temperature.banded(grid, Coverage.NINETY),
                humidity.clamped(0, 100).banded(grid, Coverage.NINETY),
                new BitSet(),
                film.wetness());
    }

    private void cell(int i) {
        boolean lightKnown = !Double.isNaN(photons[i]);
        double clear = lightKnown ? 0 : sky.clearGlobalLight(grid.at(i));
        double global = lightKnown ? Daylight.global(photons[i]) : UNMEASURED_LIGHT * clear;
        double lightDeviation = UNMEASURED_LIGHT_DEVIATION * clear;
        if (Double.isNaN(houseTemperature[i]) || Double.isNaN(global)) {
            balance.restart();
            return;
        }
        double day = Daylight.share(global);
        balance.stepHeat(houseTemperature[i], global, day);
        double variance = ownVariance(day, lightDeviation);
        double house = sensor.temperature();
        temperature.set(i, balance.temperature(), Coverage.NINETY.deviations() * Math.sqrt(variance + house * house));
        if (Double.isNaN(houseHumidity[i])) {
            balance.restartVapour();
        } else {
            vapour(i, day, variance);
        }
    }

    /** Variance of the difference between bag and house temperature, K². */
    private double ownVariance(double day, double lightDeviation) {
        double gain = balance.feltLight() * belief.sunGain().deviation();
        double light = belief.sunGain().mean() * lightDeviation;
        double response =
                balance.responseSensitivity() * belief.responseMinutes().deviation();
        double night = (1 - day) * belief.nightCooling().deviation();
        double rest = belief.temperatureRest();
        return gain * gain + light * light + response * response + night * night + rest * rest;
    }

    private void vapour(int i, double day, double temperatureVariance) {
        double houseSaturation = MoistAir.saturationKilopascals(houseTemperature[i]);
        balance.stepVapour(houseHumidity[i] / 100 * houseSaturation, day);
        double percent = balance.humidity();
        double dryness = 100 - percent;
        double openShare =
                1 - share(belief.closureByNight().mean(), belief.closureByDay().mean(), day);
        double byTemperature = balance.openHumidity() * relativeSlope(balance.temperature());
        double byHouse = sensor.humidityAt(houseHumidity[i]) * houseSaturation / balance.saturation();
        double rest = belief.humidityRest();
        double variance =
                openShare * openShare * (byTemperature * byTemperature * temperatureVariance + byHouse * byHouse)
                        + rest * rest;
        double other = Coverage.NINETY.deviations() * Coverage.NINETY.deviations() * variance;
        double drier = dryness * (share(byNight.drier(), byDay.drier(), day) - 1);
        double damper = dryness * (1 - share(byNight.damper(), byDay.damper(), day));
        double below = Math.sqrt(drier * drier + other);
        double above = Math.sqrt(damper * damper + other);
        humidity.set(i, percent, percent - below, percent + above);
        film.cell(i, balance, 1 - day, below, above);
    }

    private static double share(double night, double day, double dayShare) {
        return night + (day - night) * dayShare;
    }

    /** Relative growth of the saturation pressure, per K: FAO-56 equation 13 over equation 11; t in °C. */
    private static double relativeSlope(double celsius) {
        double below = celsius + 237.3;
        return 4098 / (below * below);
    }
}
