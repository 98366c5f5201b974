namespace Sightglass.Plant.Plans;

/// <summary>
/// What a change of a control's position does to other slots at the same moment: a pushed button trips a valve, a start button
/// starts an engine.
/// </summary>
/// <param name="Name">For the journal: a sentence that is said when somebody reads it; empty where nothing is told.</param>
/// <param name="Trigger">The slot that changed.</param>
/// <param name="When">Holds after the change.</param>
/// <param name="Sets">The slot it sets.</param>
/// <param name="To">The value it sets, from the slots.</param>
public sealed record PulseRule(FormattableString Name, Slot Trigger, SlotCondition When, Slot Sets, SlotFunction To);
