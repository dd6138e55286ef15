package bagward.watch;

import bagward.climate.Climate;
import bagward.climate.Span;
import bagward.mould.SeedStay;
import bagward.mould.Storage;
import bagward.station.House;

/**
 * What the air of a drying place was over a stretch of time.
 *
 * @param house the place
 * @param span the stretch
 * @param air its climate by the minute
 * @param seed what it did to seed that hung there
 * @param storage what is known of keeping seed
 */
public record PlaceStay(House house, Span span, Climate air, SeedStay seed, Storage storage) {}
