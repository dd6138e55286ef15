package bagward.alarm;

/**
 * What a person is to do about an alarm. A rule without one is refused.
 *
 * @param what to do
 * @param why it matters
 * @param howSoon by when
 * @param proof how you know it worked
 * @param caution for the people who do it; may be empty
 */
public record ActionCard(String what, String why, String howSoon, String proof, String caution) {}
