/**
 * Moist air, light, sun, readings and regular series. Pure: no clock, no input or output, no state.
 *
 * <p>How to find one's way:
 *
 * <ul>
 *   <li><b>Air.</b> {@link bagward.climate.MoistAir} holds the one saturation formula (FAO-56 equation 11) that
 *       everything else rests on; {@link bagward.climate.VapourContent} gives masses of vapour,
 *       {@link bagward.climate.Psychrometer} the wet bulb, {@link bagward.climate.ColdSurface} says whether water
 *       condenses, {@link bagward.climate.AirPressure} comes from elevation.
 *   <li><b>Light.</b> {@link bagward.climate.Light} converts between photons, lux and watts with the factors of
 *       {@link bagward.climate.LightSource};
 *       {@link bagward.climate.LightSum} is the light of a day, or says that it is not the whole.
 *   <li><b>Sun.</b> {@link bagward.climate.Sun} stands where NREL's algorithm puts it; {@link bagward.climate.ClearSky},
 *       {@link bagward.climate.DailyRadiation} and {@link bagward.climate.HourlyRadiation} say what a cloudless sky
 *       gives; {@link bagward.climate.SkyView} compares, with the {@link bagward.climate.Transmission} of a house.
 *   <li><b>Series.</b> {@link bagward.climate.Resampler} puts {@link bagward.climate.Reading readings} onto a
 *       {@link bagward.climate.TimeGrid}; {@link bagward.climate.MergedSeries} makes one of several sensors;
 *       {@link bagward.climate.Statistics}, {@link bagward.climate.TimeAtLeast} and
 *       {@link bagward.climate.DegreeDays} sum up a {@link bagward.climate.Span} and count what is unknown
 *       ({@link bagward.climate.Coverage}).
 *   <li><b>Wetness.</b> {@link bagward.climate.WetnessRule} for houses and bags, {@link bagward.climate.WindTree} for
 *       outdoors only.
 *   <li><b>Sensors.</b> {@link bagward.climate.SensorSense} and {@link bagward.climate.StuckWet} find what is odd;
 *       {@link bagward.climate.SaltCheck} makes a {@link bagward.climate.HumidityCorrection}, and
 *       {@link bagward.climate.CorrectedReadings} applies it from its date on.
 * </ul>
 *
 * <p>Units: temperatures in °C, relative humidity in %RH over liquid water, pressures in Pa (typed) or kPa (bare
 * numbers), light in µmol m⁻² s⁻¹, sums of it in mol m⁻², radiation in W m⁻² or MJ m⁻². A method on bare numbers has
 * the unit in its name or its comment and checks nothing; a typed one refuses what cannot be with an
 * {@link bagward.fault.ImpossibleValueException}. A gap is NaN, and only inside a
 * {@link bagward.climate.RegularSeries}.
 *
 * <p>Sources: each formula names its own. A number "from memory" was not read in a text; one that is "ours" is a choice.
 */
package bagward.climate;
