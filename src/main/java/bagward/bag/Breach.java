package bagward.bag;

import bagward.fault.Fault;

/**
 * A rule that a change breaks.
 *
 * @param change the change
 * @param against the other change it collides with; the change itself if there is none
 * @param field which part of it
 * @param found the value
 * @param rule what is allowed
 * @param remedy what to do
 */
record Breach(RegisterChange change, RegisterChange against, String field, String found, String rule, String remedy) {

    Fault fault(String place) {
        return new Fault(place, found, rule, remedy);
    }
}
