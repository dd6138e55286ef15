package bagward.board;

import bagward.bag.BagClimate;
import bagward.climate.Climate;

/**
 * The climate around and inside one bag, on one grid, from when it was put on.
 *
 * @param house climate of its bay or house
 * @param bag climate inside it
 */
public record BaggedClimate(Climate house, BagClimate bag) {}
