using System.Collections.Immutable;

namespace Sightglass.Drawing.Ladder;

/// <summary>A part as drawn: an upright line from one bar down to another with its symbol in the middle.</summary>
/// <param name="Part">What it is.</param>
/// <param name="X">Of the line.</param>
/// <param name="Top">Of its upper bar.</param>
/// <param name="Bottom">Of its lower bar.</param>
/// <param name="Y">Of the middle of its symbol.</param>
/// <param name="IsTurned">Whether its minus side is up.</param>
/// <param name="Words">Its label, in lines.</param>
public sealed record LadderRung(LadderPart Part, double X, double Top, double Bottom, double Y, bool IsTurned, ImmutableArray<string> Words);
