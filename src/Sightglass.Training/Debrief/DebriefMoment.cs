using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Training.Drills;

namespace Sightglass.Training.Debrief;

/// <summary>A run at one moment: what the trainee could know where they stood, and what was so.</summary>
/// <param name="At">The clock.</param>
/// <param name="People">Where everybody was, by their numbers.</param>
/// <param name="Seen">What the trainee saw, heard, smelled and held.</param>
/// <param name="Truth">SI, in the order of <see cref="DebriefFilm.Signals"/>.</param>
/// <param name="Faults">What was at fault: item and fault, in the book's words.</param>
public sealed record DebriefMoment(SimTime At, ImmutableArray<DebriefStand> People, Sight Seen, ImmutableArray<double> Truth, ImmutableArray<(string Item, string Fault)> Faults)
{
    /// <summary>What an instrument showed to the trainee, SI; null where they could not read it.</summary>
    public double? Shown(DebriefSignal signal)
    {
        ArgumentNullException.ThrowIfNull(signal);
        return signal.Instrument is { } item ? Seen.Items.FirstOrDefault(i => i.Name == item.Name)?.Shows : null;
    }
}
