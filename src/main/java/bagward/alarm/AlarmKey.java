package bagward.alarm;

/**
 * Identity of an alarm.
 *
 * @param rule which rule
 * @param subject about what
 */
public record AlarmKey(RuleId rule, Subject subject) {}
