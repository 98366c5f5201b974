using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>Somewhere a person can stand.</summary>
/// <param name="OnGround">Ground places are joined along the outline automatically; others need legs.</param>
public sealed record Place(string Name, Span Span, Point3 Position, bool OnGround, string Text)
{
    /// <summary>How many people find room there, whoever speaks among them; null where nobody has said.</summary>
    public int? Room { get; init; }

    /// <summary>The vehicle it belongs to.</summary>
    public Vehicle Vehicle { get; init; } = Vehicle.Alone;
}
