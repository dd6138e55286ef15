package bagward.climate;

import bagward.units.Illuminance;
import bagward.units.Irradiance;
import bagward.units.PhotonFlux;

/**
 * Conversions between photon flux, lux and watts. Lux to watts and global radiation to photons are estimates and are
 * to be shown as such.
 */
public final class Light {
    /** Share of the energy of global radiation that lies in 400 to 700 nm; 0.41 to 0.48 round the globe. */
    private static final double PHOTOSYNTHETIC_SHARE = 0.45;
    /** µmol of photosynthetic photons for each joule of them in daylight; McCree 1972, Agric. Meteorol. 10:443. */
    private static final double MICROMOLES_PER_JOULE = 4.57;

    /** µmol m⁻² s⁻¹ of photons for each W m⁻² of global radiation: 0.45 times 4.57 = 2.06, good to about 5 %. */
    public static final double MICROMOLES_PER_GLOBAL_WATT = PHOTOSYNTHETIC_SHARE * MICROMOLES_PER_JOULE;

    /**
     * lx for each W m⁻² of global radiation: 120, good to 10 % at best. Michael, Johnston and Moreno 2020 (J. Meas.
     * Eng., doi 10.21595/jme.2020.21667) measured 122 outdoors and found 21 to 131 in the literature.
     */
    public static final double LUX_PER_GLOBAL_WATT = 120;

    private Light() {}

    /**
     * Photon flux from lux.
     *
     * @throws bagward.fault.ImpossibleValueException if it comes out above 3000 µmol m⁻² s⁻¹: the factor is not that of
     *     the light
     */
    public static PhotonFlux photonFlux(Illuminance illuminance, LightFactor factor) {
        return new PhotonFlux(illuminance.lux() / factor.luxPerMicromole());
    }

    /** Lux from photon flux. */
    public static Illuminance illuminance(PhotonFlux photons, LightFactor factor) {
        return new Illuminance(photons.micromoles() * factor.luxPerMicromole());
    }

    /** Power of the photosynthetic waveband alone, 400 to 700 nm. */
    public static Irradiance photosyntheticPower(PhotonFlux photons, LightSource source) {
        return new Irradiance(photons.micromoles() / source.micromolesPerJoule());
    }

    /** Photon flux of daylight from global radiation; an estimate, good to about 5 %. */
    public static PhotonFlux photonFlux(Irradiance global) {
        return new PhotonFlux(global.wattsPerSquareMetre() * MICROMOLES_PER_GLOBAL_WATT);
    }

    /** Global radiation from the photon flux of daylight; an estimate, good to about 5 %. */
    public static Irradiance globalRadiation(PhotonFlux photons) {
        return new Irradiance(globalWattsPerSquareMetre(photons.micromoles()));
    }

    /** Global radiation from lux of daylight; an estimate, good to 10 % at best. */
    public static Irradiance globalRadiation(Illuminance illuminance) {
        return new Irradiance(illuminance.lux() / LUX_PER_GLOBAL_WATT);
    }

    /** Twin of {@link #globalRadiation(PhotonFlux)} for hot loops: µmol m⁻² s⁻¹ to W m⁻²; checks nothing. */
    public static double globalWattsPerSquareMetre(double micromoles) {
        return micromoles / MICROMOLES_PER_GLOBAL_WATT;
    }
}
