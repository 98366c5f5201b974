using Sightglass.Book.Model;
using Sightglass.Plant.Signals;
using Sightglass.World;

namespace Sightglass.Training.Drills;

/// <summary>Something that happens once in a drill, with every name settled.</summary>
/// <param name="Event">As the book has it.</param>
/// <param name="When">Null: at the start.</param>
/// <param name="Does">What it does; null where it only says something.</param>
public sealed record BoundEvent(DrillEvent Event, Signal? When, WorldAction? Does);
