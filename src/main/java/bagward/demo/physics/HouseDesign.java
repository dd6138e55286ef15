package bagward.demo.physics;

/**
 * What a glasshouse of the demo is like; all flows are for each square metre of floor.
 *
 * @param transmission share of the light that reaches the plants, 0 to 1
 * @param heatDayCelsius heating set point by day, °C
 * @param heatNightCelsius heating set point by night, °C
 * @param ventCelsius temperature at which the vents begin to open, °C
 * @param dryAbovePercent humidity above which the house is dried by a crack of vent and a warm pipe, %RH
 * @param dryingPipe pipe heat that drying may use, W m⁻²
 * @param leafArea leaf area, m² m⁻²
 * @param wetFloor share of the floor that is wet, 0 to 1
 */
public record HouseDesign(
        double transmission,
        double heatDayCelsius,
        double heatNightCelsius,
        double ventCelsius,
        double dryAbovePercent,
        double dryingPipe,
        double leafArea,
        double wetFloor) {}
