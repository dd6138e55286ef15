package bagward.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class BagModelTest {
    private static final BagDesign FILM = new BagDesign(0.12, 0.002, 3e-5, 6e-5, 0.85, 0.12, 0.018, 0.06);
    private static final BagDesign OPEN_NET = new BagDesign(0.12, 0.002, 3e-3, 6e-3, 0.9, 0.02, 0.018, 0.06);
    private static final BagDesign NO_HEAD = new BagDesign(0.12, 0.002, 3e-5, 6e-5, 0.85, 0, 1e-9, 0.06);
    private static final HouseAir NIGHT = house(13, 75, 6, 0);
    private static final HouseAir NOON = house(22, 60, 15, 400);

    @Test
    void by_night_the_bag_is_cooler_and_wetter_than_the_house() {
        BagAir bag = after(new BagModel(FILM), NIGHT, 8);
        assertTrue(bag.celsius() < NIGHT.celsius(), "bag " + bag);
        assertTrue(bag.percent() > NIGHT.percent() + 4, "bag " + bag.percent());
    }

    @Test
    void by_day_the_bag_is_hotter_than_the_house() {
        BagAir bag = after(new BagModel(FILM), NOON, 3);
        double warming = bag.celsius() - NOON.celsius();
        assertTrue(warming > 2 && warming < 12, "warming " + warming);
    }

    @Test
    void a_net_hardly_differs_from_the_house() {
        BagAir bag = after(new BagModel(OPEN_NET), NIGHT, 8);
        assertEquals(NIGHT.percent(), bag.percent(), 4);
        assertEquals(NIGHT.celsius(), bag.celsius(), 0.6);
    }

    @Test
    void a_bag_that_falls_shut_gets_wetter() {
        BagModel shut = new BagModel(FILM);
        double before = after(shut, NIGHT, 8).percent();
        shut.fallShut();
        double afterwards = after(shut, NIGHT, 8).percent();
        assertTrue(afterwards > before + 6 && afterwards > 95, before + " then " + afterwards);
    }

    @Test
    void water_that_condenses_at_night_evaporates_again_in_a_dry_day() {
        BagModel shut = new BagModel(FILM);
        HouseAir foggy = house(13, 99, 4, 0);
        double wet = after(shut, foggy, 6).waterOnFilm();
        double dried = after(shut, house(24, 35, 20, 150), 24).waterOnFilm();
        assertTrue(wet > 1e-5, "water " + wet);
        assertEquals(0, dried, 1e-9);
    }

    @Test
    void a_dark_bag_in_air_as_warm_as_the_glass_rests_at_that_temperature() {
        BagAir bag = after(new BagModel(NO_HEAD), house(18, 50, 18, 0), 200);
        assertEquals(18, bag.celsius(), 0.01);
        assertEquals(18, bag.filmCelsius(), 0.01);
        assertEquals(50, bag.percent(), 0.5);
    }

    @Test
    void four_times_the_light_warms_a_dry_bag_about_four_times_as_much() {
        BagDesign dryHead = new BagDesign(0.12, 0.002, 3e-1, 0, 0.85, 0.12, 0.018, 0.06);
        double weak = after(new BagModel(dryHead), house(20, 100, 20, 100), 30).headCelsius() - 20;
        double strong =
                after(new BagModel(dryHead), house(20, 100, 20, 400), 30).headCelsius() - 20;
        assertTrue(weak > 0.2, "warming " + weak);
        assertEquals(4, strong / weak, 0.9);
    }

    private static HouseAir house(double celsius, double percent, double glass, double light) {
        return new HouseAir(celsius, percent / 100 * Vapour.saturationDensity(celsius), glass, light, 0.1);
    }

    private static BagAir after(BagModel bag, HouseAir house, int hours) {
        BagAir inside = bag.step(house, 60);
        for (int minute = 1; minute < hours * 60; minute++) {
            inside = bag.step(house, 60);
        }
        return inside;
    }
}
