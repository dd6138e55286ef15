package bagward.mould;

import bagward.bag.BagClimate;

/**
 * The mould index as a row of the mould table. Bands are noted at the ends of whole steps only, so that their times do not
 * depend on where the climate ends.
 */
final class IndexPass {
    private IndexPass() {}

    static Finding over(BagClimate climate, Organism organism, GrowthIndex model, Level level) {
        BandClock clock = new BandClock(organism.bands());
        IndexWalk walk = new IndexWalk(model, IndexState.CLEAN);
        walk.over(climate.temperature().middle(), level.humidityOf(climate), cell -> clock.note(walk.index(), cell));
        BandTimes times = clock.times(climate.grid());
        String atHigh = times.high().isEmpty()
                ? ""
                : model.reason(organism.name(), organism.bands().high());
        return new Finding(walk.highest(), times, model.reason(organism.name(), walk.highest()), atHigh);
    }
}
