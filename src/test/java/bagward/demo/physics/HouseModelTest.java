package bagward.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class HouseModelTest {
    private static final HouseDesign DESIGN = new HouseDesign(0.62, 17, 13, 21, 74, 40, 1.5, 0.15);
    private static final Weather COLD_CLEAR_NIGHT = new Weather(2, Vapour.density(600, 2), 0, -17, 1.5);
    private static final Weather SUNNY_NOON = new Weather(12, Vapour.density(800, 12), 750, -7, 3);

    @Test
    void heating_holds_the_house_near_its_set_point_on_a_cold_night() {
        HouseAir air = after(new HouseModel(DESIGN), COLD_CLEAR_NIGHT, 8);
        assertTrue(air.celsius() > 10.5 && air.celsius() < 14.5, "air " + air);
    }

    @Test
    void glass_under_a_clear_night_sky_is_colder_than_the_air_in_the_house() {
        HouseAir air = after(new HouseModel(DESIGN), COLD_CLEAR_NIGHT, 8);
        assertTrue(air.glassCelsius() < air.celsius() - 3, "glass " + air);
    }

    @Test
    void sun_warms_the_house_and_the_vents_keep_it_from_boiling() {
        HouseAir air = after(new HouseModel(DESIGN), SUNNY_NOON, 4);
        assertTrue(air.celsius() > 20 && air.celsius() < 30, "air " + air);
    }

    @Test
    void a_house_without_vents_or_leaks_to_spare_gets_hotter_than_one_that_vents_early() {
        HouseDesign shut = new HouseDesign(0.62, 17, 13, 60, 100, 0, 1.5, 0.15);
        double closed = after(new HouseModel(shut), SUNNY_NOON, 4).celsius();
        double vented = after(new HouseModel(DESIGN), SUNNY_NOON, 4).celsius();
        assertTrue(closed > vented + 3, closed + " against " + vented);
    }

    @Test
    void a_wet_floor_and_more_leaves_make_the_night_moister() {
        HouseDesign wet = new HouseDesign(0.62, 17, 13, 21, 100, 0, 2.5, 0.5);
        HouseDesign dry = new HouseDesign(0.62, 17, 13, 21, 100, 0, 0.8, 0.0);
        double moist = after(new HouseModel(wet), COLD_CLEAR_NIGHT, 8).percent();
        double drier = after(new HouseModel(dry), COLD_CLEAR_NIGHT, 8).percent();
        assertTrue(moist > drier + 5, moist + " against " + drier);
    }

    @Test
    void an_unheated_dry_house_settles_between_floor_and_sky_and_stays_there() {
        HouseDesign bare = new HouseDesign(0.62, -40, -40, 60, 100, 0, 0.1, 0);
        HouseModel house = new HouseModel(bare);
        HouseAir settled = after(house, COLD_CLEAR_NIGHT, 400);
        HouseAir later = after(house, COLD_CLEAR_NIGHT, 10);
        assertTrue(settled.celsius() < 2 && settled.celsius() > -17, "air " + settled);
        assertEquals(settled.celsius(), later.celsius(), 0.01, "a rest state");
    }

    private static HouseAir after(HouseModel house, Weather weather, int hours) {
        HouseAir air = house.step(weather, 60);
        for (int minute = 1; minute < hours * 60; minute++) {
            air = house.step(weather, 60);
        }
        return air;
    }
}
