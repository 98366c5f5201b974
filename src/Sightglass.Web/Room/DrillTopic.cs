using Sightglass.Basics.Quantities;
using Sightglass.Plant.Signals;

namespace Sightglass.Web.Room;

/// <summary>A quantity that a drill is about: hidden truth, or what an instrument shows of it.</summary>
/// <param name="Name">As formulas name it: <c>fill of aft compartment</c>; of an instrument its own name.</param>
/// <param name="Item">The item that it is of.</param>
/// <param name="Unit">In which it is shown.</param>
/// <param name="Signal">Its value, SI.</param>
/// <param name="Resolution">The least step that is shown, SI.</param>
/// <param name="IsTruth">Whether nobody in the drill can know it.</param>
/// <param name="IsFill">Whether it is the share of a store that is full, 0…1.</param>
/// <param name="Scale">Of an instrument, SI; null: by what it has been.</param>
public sealed record DrillTopic(string Name, string Item, Unit Unit, Signal Signal, double Resolution, bool IsTruth, bool IsFill, (double From, double To)? Scale)
{
    /// <summary>Whether it is a condition: its value is not negative while it is so.</summary>
    public bool IsState { get; init; }

    /// <summary>The fault that is meant, in the words of the kind; null: none.</summary>
    public string? Fault { get; init; }
}
