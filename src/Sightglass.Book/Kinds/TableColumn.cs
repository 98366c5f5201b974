using System.Collections.Immutable;
using Sightglass.Basics.Quantities;

namespace Sightglass.Book.Kinds;

/// <summary>A column of a table parameter, written in the sheet's choices as <c>height: length</c>.</summary>
public sealed record TableColumn(string Name, Dimension Dimension)
{
    private static readonly ImmutableArray<Dimension> s_dimensions =
    [
        Dimension.One, Dimension.Kilogram, Dimension.Metre, Dimension.Second, Dimension.Kelvin, Dimension.Ampere, Dimension.Area, Dimension.Volume,
        Dimension.Speed, Dimension.VolumeFlow, Dimension.MassFlow, Dimension.Density, Dimension.Pressure, Dimension.Power, Dimension.Energy,
        Dimension.Frequency, Dimension.Voltage, Dimension.KinematicViscosity,
    ];

    /// <summary>The columns of a table parameter in order.</summary>
    /// <exception cref="InvalidOperationException">The sheet's columns do not read: a defect of the sheet.</exception>
    public static ImmutableArray<TableColumn> Of(KindParameter parameter)
    {
        ArgumentNullException.ThrowIfNull(parameter);
        return parameter.Choices.IsDefaultOrEmpty
            ? throw new InvalidOperationException($"The table `{parameter.Name}` names no columns.")
            : [.. parameter.Choices.Select(c => One(parameter, c))];
    }

    private static TableColumn One(KindParameter parameter, string column)
    {
        string[] parts = column.Split(':', StringSplitOptions.TrimEntries);
        string wanted = parts.Length == 2 ? parts[1] : "";
        wanted = wanted is "number" or "plain number" ? Dimension.One.ToString() : wanted;
        foreach (Dimension d in s_dimensions)
        {
            if (d.ToString() == wanted)
            {
                return new(parts[0], d);
            }
        }

        throw new InvalidOperationException($"The column `{column}` of the table `{parameter.Name}` is not `name: dimension`.");
    }
}
