using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;

namespace Sightglass.Book.Readers;

/// <summary>What a starting value means: a number of a dimension, or (where <see cref="Positions"/> is given) a position.</summary>
internal readonly record struct StartMeaning(Dimension Dimension, ImmutableArray<string> Positions, WorldInput? Input = null);
