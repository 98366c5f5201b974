using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.World.Hauls;

/// <summary>What is in a compartment during a run.</summary>
/// <param name="Item">The tank.</param>
/// <param name="Volumes">m³, one for each moment of <see cref="UnitFuel.Seconds"/>.</param>
public sealed record CompartmentFuel(Item Item, ImmutableArray<double> Volumes);
