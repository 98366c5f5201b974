using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <summary>
/// A part of the plant that changes state by itself when a margin rises through zero: an engine that stops, a float that shuts, a speed that is told on.
/// </summary>
/// <param name="Name">For messages and the journal: <c>engine stops for want of fuel</c>; a sentence that is said when somebody reads it.</param>
/// <param name="Network">Whose steps land on the crossing.</param>
/// <param name="Margin">Negative before, not negative when it fires.</param>
/// <param name="When">Armed only while this holds of the slots.</param>
/// <param name="Sets">The slot it sets.</param>
/// <param name="To">The value it sets, from the state at the crossing.</param>
/// <param name="Follows">
/// It hands a number from one network to others: <paramref name="Sets"/> holds what was told last, and is told anew when it has moved by a band
/// (the margin), at the start, and at an event that moves it by as much. It fires often by design and is nothing to tell a person.
/// </param>
/// <param name="Jumps">Its margin also comes from slots, so that an event can carry it over zero: a relay that looks at a handle.</param>
public sealed record SwitchRule(FormattableString Name, int Network, Signal Margin, SlotCondition When, Slot Sets, Signal To, bool Follows = false, bool Jumps = false)
{
    /// <summary>Whether an event can carry its margin over zero, so that it is looked at after each.</summary>
    public bool FiresAtEvents => Follows || Jumps;
}

/// <summary>A pure condition on the slots.</summary>
public delegate bool SlotCondition(ReadOnlySpan<double> slots);
