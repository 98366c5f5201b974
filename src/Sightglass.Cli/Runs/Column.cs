using Sightglass.Basics.Quantities;

namespace Sightglass.Cli.Runs;

/// <summary>One thing recorded in a run.</summary>
/// <param name="Name">As asked for.</param>
/// <param name="Unit">In which its values are given; one for conditions (1 true, 0 false) and positions.</param>
/// <param name="Sort">What its values are.</param>
/// <param name="Words">For positions: the word of each value.</param>
/// <param name="Resolution">SI; the least step it shows, or null.</param>
/// <param name="Value">Its value now, SI; only with a state in view.</param>
internal sealed record Column(string Name, Unit Unit, ColumnSort Sort, IReadOnlyList<string> Words, double? Resolution, Func<World.World, double> Value)
{
    /// <summary>Whether nobody on the machine can know it.</summary>
    public bool IsTruth { get; init; }

    /// <summary>A value as a person reads it.</summary>
    public string Text(double value) => Sort switch
    {
        ColumnSort.Condition => value > 0.5 ? "yes" : "no",
        ColumnSort.Position => Words[(int)value],
        _ => QuantityFormat.Text(value, Unit, Resolution),
    };

    /// <summary>A value in the column's unit.</summary>
    public double InUnit(double value) => Sort == ColumnSort.Quantity ? Unit.FromSi(value) : value;
}
