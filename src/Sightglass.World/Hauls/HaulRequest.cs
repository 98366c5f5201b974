using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.World.Hauls;

/// <summary>What is asked of a train on a route.</summary>
/// <param name="Route">A route of the book.</param>
/// <param name="Train">A train of the book; null for the machine alone.</param>
public sealed record HaulRequest(Route Route, string? Train)
{
    /// <summary>Share of the fuel at the start that is kept back where nothing is said (common practice, no source).</summary>
    public const double UsualMargin = 0.2;

    /// <summary>The machine whose modifications apply; null for the class.</summary>
    public string? RoadNumber { get; init; }

    /// <summary>How the rail is; the usual of the route where absent.</summary>
    public string? Rail { get; init; }

    /// <summary>Whether it sands where the rail does not hold its effort.</summary>
    public bool Sands { get; init; } = true;

    /// <summary>Machines that do not work, counted from the head: 1, 2, …</summary>
    public ImmutableSortedSet<int> Dead { get; init; } = [];

    /// <summary>W for the cars, all the time; what the loads of the train take by the book where absent.</summary>
    public double? HeadEnd { get; init; }

    /// <summary>Share to which every compartment is filled at the start; as the class is built where absent.</summary>
    public double? Fill { get; init; }

    /// <summary>Starting values of each machine by the names of the book, such as <c>aft supply valve</c> and <c>closed</c>; they go before <see cref="Fill"/>.</summary>
    public ImmutableArray<(string Name, string Value)> Sets { get; init; } = [];

    /// <summary>Share of the fuel at the start that is kept back.</summary>
    public double Margin { get; init; } = UsualMargin;

    /// <summary>Mileposts, m, at which it is stopped on a trial basis.</summary>
    public ImmutableArray<double> StopsAt { get; init; } = [];
}
