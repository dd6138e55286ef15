package bagward.watch;

import bagward.bag.BagClimate;
import bagward.bag.Bagging;
import bagward.bag.Head;
import bagward.climate.Climate;
import bagward.mould.MouldReport;

/**
 * What a bag went through.
 *
 * @param head the head
 * @param bagging its newest bag
 * @param house climate of its bay or house on the same grid
 * @param bag climate inside the bag
 * @param mould what every organism makes of the head since its first bag, and its wet spells
 */
public record BagHistory(Head head, Bagging bagging, Climate house, BagClimate bag, MouldReport mould) {}
