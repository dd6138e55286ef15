package bagward.message;

import bagward.board.AlarmView;

/**
 * Something new to tell one person about one alarm.
 *
 * @param alarm the alarm with its rule and place
 * @param told what will have been told
 */
record News(AlarmView alarm, Told told) {}
