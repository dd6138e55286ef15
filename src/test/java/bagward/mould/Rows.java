package bagward.mould;

/** Rows of the mould table that several tests share. */
final class Rows {
    static final WetnessInfection FLOWERS = new WetnessInfection(1, 25, 34, 1, 12, DryBreak.endingFrom(4));
    static final Organism BOTRYTIS_ON_FLOWERS =
            new Organism("botrytis-flowers", "Botrytis on flowers", FLOWERS, BandLimits.OF_NEED, "test row");
    static final Organism BOTRYTIS_LOGIT = new Organism(
            "botrytis-berries",
            "Botrytis on berries",
            new InfectionLogit(),
            new InfectionLogit().usualBands(),
            "test row");
    static final Organism ALTERNARIA_SPORES = new Organism(
            "alternaria-spores",
            "Alternaria for spores",
            new HumidHours(WetRule.humidFrom(91.5, 5, 24), 12, DryBreak.endingFrom(3)),
            BandLimits.OF_NEED,
            "test row");

    private Rows() {}
}
