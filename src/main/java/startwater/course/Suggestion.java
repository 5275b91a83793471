package startwater.course;

import startwater.drill.Skill;

/**
 * One thing to do next, as the coach values it.
 *
 * @param item the drill or lesson
 * @param skill the skill that it is meant for most
 * @param value higher is better
 * @param open whether its time has come: what it needs is likely known, its main skill was met, and the best play is not a
 *     third time the same
 * @param reason why
 */
public record Suggestion(Item item, Skill skill, double value, boolean open, Reason reason) {}
