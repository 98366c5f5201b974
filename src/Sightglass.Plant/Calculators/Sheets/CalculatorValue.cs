using System.Collections.Immutable;
using Sightglass.Basics.Quantities;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>A value that a calculator asks for, or gives.</summary>
/// <param name="Name">As it is written: <c>speed</c>.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Text">What it is.</param>
/// <param name="Example">A value with its unit; of a result the unit in which it is shown.</param>
public sealed record CalculatorValue(string Name, Dimension Dimension, string Text, string Example)
{
    /// <summary>What it is where nothing is given; null where it must be.</summary>
    public string? Usual { get; init; }

    /// <summary>The least that may be given, with its unit.</summary>
    public string? Least { get; init; }

    /// <summary>The most that may be given, with its unit.</summary>
    public string? Most { get; init; }

    /// <summary>What a pressure is measured from.</summary>
    public PressureBasis Basis { get; init; } = PressureBasis.Either;

    /// <summary>Whether it counts things: only whole numbers.</summary>
    public bool IsWhole { get; init; }

    /// <summary>Words of which one is given instead of a number; its value is its place among them, from 0.</summary>
    public ImmutableArray<string> Choices { get; init; } = [];
}
