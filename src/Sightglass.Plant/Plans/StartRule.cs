using System.Collections.Immutable;
using Sightglass.Basics.Quantities;

namespace Sightglass.Plant.Plans;

/// <summary>A starting value that a situation may give: <c>fill of aft compartment</c>.</summary>
/// <param name="Name">As written in situations.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Network">Whose amount it sets, or −1 for a slot.</param>
/// <param name="Amount">The amount it sets.</param>
/// <param name="ToAmount">Amount from the value given (SI).</param>
/// <param name="Slot">The slot it sets where <paramref name="Network"/> is −1.</param>
/// <param name="Choices">Words it takes instead of a number, in the order of slot values.</param>
public sealed record StartRule(
    string Name,
    Dimension Dimension,
    int Network,
    Network.Compile.Amount Amount,
    Func<double, double>? ToAmount,
    Slot Slot,
    ImmutableArray<string> Choices)
{
    /// <summary>SI; less than this there cannot be.</summary>
    public double Least { get; init; } = double.NegativeInfinity;

    /// <summary>SI; more than this there cannot be.</summary>
    public double Greatest { get; init; } = double.PositiveInfinity;

    /// <summary>Amounts of small volumes that begin with it, such as the chamber of a valve at a pipe: network, amount, and its amount by the value given.</summary>
    public ImmutableArray<(int Network, Network.Compile.Amount Amount, Func<double, double> ToAmount)> Also { get; init; } = [];
}
