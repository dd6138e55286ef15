package bagward.watch;

import bagward.bag.BagClimate;
import bagward.bag.Bagging;
import bagward.bag.Head;
import bagward.climate.Climate;

/**
 * What a bag went through.
 *
 * @param head the head
 * @param bagging its newest bag
 * @param house climate of its bay or house on the same grid
 * @param bag climate inside the bag
 */
public record BagHistory(Head head, Bagging bagging, Climate house, BagClimate bag) {}
