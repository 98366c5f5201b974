using System.Collections.Immutable;
using Sightglass.Drawing.Ladder;
using Sightglass.Drawing.Svg;
using M = Sightglass.Drawing.Diagram.DiagramMeasure;

namespace Sightglass.Drawing.Diagram;

/// <summary>
/// All that changes in a diagram when its state changes: element and attribute → value. The drawing is written from it, and a page that
/// shows the drawing is kept up to date with the differences between two of them.
/// </summary>
public sealed class DiagramValues
{
    private readonly ImmutableDictionary<(string Id, string Attribute), string> _values;

    private DiagramValues(ImmutableDictionary<(string Id, string Attribute), string> values) => _values = values;

    /// <summary>Value of an attribute of an element that the state decides.</summary>
    /// <exception cref="KeyNotFoundException">The state does not decide it.</exception>
    public string this[string id, string attribute] => _values[(id, attribute)];

    /// <summary>The values of a layout in a state.</summary>
    /// <param name="layout">What is drawn.</param>
    /// <param name="state">Its state.</param>
    /// <param name="idPrefix">As in <see cref="SvgOptions.IdPrefix"/>.</param>
    public static DiagramValues Of(DiagramLayout layout, DiagramState state, string idPrefix = "") =>
        new(new DiagramValueBuilder(layout, state, idPrefix).Build());

    /// <summary>The values of a circuit drawing in a state.</summary>
    /// <param name="layout">What is drawn.</param>
    /// <param name="state">Its state.</param>
    /// <param name="idPrefix">As in <see cref="SvgOptions.IdPrefix"/>.</param>
    public static DiagramValues Of(LadderLayout layout, LadderState state, string idPrefix = "") =>
        new(new LadderValueBuilder(layout, state, idPrefix).Build());

    /// <summary>What has to be set so that a drawing of the first shows the second, in the order of ids.</summary>
    public static ImmutableArray<DiagramDelta> Between(DiagramValues before, DiagramValues after) =>
    [
        .. after._values.Where(v => !before._values.TryGetValue(v.Key, out string? old) || old != v.Value)
            .Select(v => new DiagramDelta(v.Key.Id, v.Key.Attribute, v.Value))
            .OrderBy(d => d.Id, StringComparer.Ordinal).ThenBy(d => d.Attribute, StringComparer.Ordinal),
    ];
}
