using System.Collections.Immutable;
using Sightglass.Basics.Quantities;

namespace Sightglass.Book.Model;

/// <summary>A quantity of the surroundings that a situation may set and formulas may name.</summary>
/// <param name="Default">SI; what it is when nothing is said.</param>
/// <param name="Unit">The unit in which it is shown.</param>
/// <param name="Least">SI; no situation may set less.</param>
/// <param name="Greatest">SI; no situation may set more.</param>
public sealed record WorldInput(
    string Name, Dimension Dimension, double Default, string Unit, string Doc, double Least = double.NegativeInfinity, double Greatest = double.PositiveInfinity)
{
    public const string AmbientTemperature = "ambient temperature";

    /// <summary>All of them, in a fixed order.</summary>
    public static ImmutableArray<WorldInput> All { get; } =
    [
        new("grade", Dimension.One, 0, "%", "Rise over run of the track, positive where the front stands higher."),
        new("cant", Dimension.One, 0, "%", "Slope across the track, positive where the right side stands higher."),
        new(AmbientTemperature, Dimension.Kelvin, 291.15, "degC", "Temperature of the air outside."),
        new("head-end load", Dimension.One, 0, "%", "Electric load of the train as a share of what the machine can give."),
        new("speed", Dimension.Speed, 0, "mph", "Speed of the train. No motion is worked out: it is what is said here until somebody says otherwise.", 0, UnitTable.Get("mph").ToSi(200)),
    ];

    public static WorldInput? Find(string name) => All.FirstOrDefault(w => w.Name == name);
}
