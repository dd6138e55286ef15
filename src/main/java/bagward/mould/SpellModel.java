package bagward.mould;

/** A model that looks at one wet spell at a time: how long, and how warm. */
public sealed interface SpellModel extends MouldModel permits WetnessInfection, InfectionLogit, HumidHours {
    /** What counts as wet. */
    WetRule wetRule();

    /** Which dry break ends a spell. */
    DryBreak dryBreak();

    /**
     * How far a spell has brought the organism, on the scale of the model's bands.
     *
     * @param hours wet time, h
     * @param celsius mean temperature of the wet time, °C
     */
    double score(double hours, double celsius);

    /**
     * The score in numbers for a person.
     *
     * @param name name of the organism
     * @param hours wet time, h
     * @param celsius mean temperature of the wet time, °C
     * @param bands where the bands of the organism begin
     */
    String reason(String name, double hours, double celsius, BandLimits bands);
}
