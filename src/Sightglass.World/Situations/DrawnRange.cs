using System.Collections.Immutable;
using Sightglass.Basics.Draws;
using Sightglass.Basics.Quantities;

namespace Sightglass.World.Situations;

/// <summary>One thing of a situation that is drawn: a number between two, or one of several words.</summary>
/// <param name="Order">Its place in the order of draws.</param>
/// <param name="Name">For people: <c>fill of aft compartment</c>, <c>leak, diameter</c>.</param>
/// <param name="From">SI.</param>
/// <param name="To">SI.</param>
/// <param name="Unit">As written, or null for words.</param>
/// <param name="Words">The words, or empty for numbers.</param>
public sealed record DrawnRange(int Order, string Name, double From, double To, Unit? Unit, ImmutableArray<string> Words)
{
    /// <summary>Only whole numbers are drawn, each as likely; both ends are whole.</summary>
    public bool IsWhole { get; init; }

    /// <summary>Whether it differs from case to case at all.</summary>
    public bool Varies => Words.Length > 1 || (Words.IsEmpty && From != To);

    /// <summary>SI, or the number of the word.</summary>
    public double Value(CaseDraws draws)
    {
        ArgumentNullException.ThrowIfNull(draws);
        double u = draws.Uniform(Order);
        return IsWhole ? Math.Min(From + Math.Floor(u * (To - From + 1)), To) : Words.IsEmpty ? Draw.Between(u, From, To) : Math.Min((int)(u * Words.Length), Words.Length - 1);
    }

    /// <summary>As people read it: <c>62 %</c>, <c>idle</c>.</summary>
    public string Say(CaseDraws draws) => Words.IsEmpty
        ? FormattableString.Invariant($"{(Unit is null ? Value(draws) : Unit.FromSi(Value(draws))):0.##} {(Unit?.Symbol is "1" ? "" : Unit?.Symbol)}").TrimEnd()
        : Words[(int)Value(draws)];
}
