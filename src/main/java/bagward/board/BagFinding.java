package bagward.board;

import bagward.alarm.Verdict;
import java.util.List;

/**
 * What one look at a bag gives.
 *
 * @param view as it is shown, without the priority of its alarms
 * @param verdicts one for each rule about bags
 * @param together what the rules by which houses call make of it
 */
record BagFinding(BagView view, List<Verdict> verdicts, List<TogetherBag> together) {}
