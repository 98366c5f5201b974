using System.Collections.Immutable;
using Sightglass.Plant.Signals;

namespace Sightglass.Training.Drills;

/// <summary>What tells the cue of a drill.</summary>
/// <param name="Name">Of the sign or the instrument.</param>
/// <param name="Places">Where it is met; everywhere where none is listed.</param>
/// <param name="Margin">While it tells it: a sign that is there; null for an instrument, which always shows something.</param>
public sealed record KnownFrom(string Name, ImmutableArray<string> Places, Signal? Margin);
