using Sightglass.Book.Model;

namespace Sightglass.Trials.Consists;

/// <summary>What a source of three phases gives. W.</summary>
/// <param name="Source">The item.</param>
/// <param name="Watts">That it gives.</param>
/// <param name="Power">That it may give for ever.</param>
public sealed record SourceReading(Item Source, double Watts, double Power)
{
    /// <summary>Below this it feeds nothing, W.</summary>
    private const double Nothing = 10;

    public bool Feeds => Watts > Nothing;

    public bool IsOver => Watts > Power;
}
