using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>What a vehicle weighs, resists and pulls, of a class. SI; null where the book does not say it.</summary>
/// <param name="Span">Where it is described.</param>
public sealed record Hauling(Span Span)
{
    /// <summary>kg in running order. A machine whose axles stand on scales needs none: it is weighed.</summary>
    public double? Mass { get; init; }

    public int Axles { get; init; } = 4;

    /// <summary>Axles that pull.</summary>
    public int DrivenAxles { get; init; }

    /// <summary>m² of front.</summary>
    public double Front { get; init; } = 11;

    /// <summary>Which form of train resistance.</summary>
    public ResistanceSort Resistance { get; init; }

    /// <summary>W that the engine gives for traction and for the train together; null for what does not pull.</summary>
    public double? Power { get; init; }

    /// <summary>Of that what comes to the rail, 0…1.</summary>
    public double Efficiency { get; init; } = 0.85;

    /// <summary>N with which its hand or parking brake holds it at the rail; null where it is not known.</summary>
    public double? HandBrake { get; init; }
}
