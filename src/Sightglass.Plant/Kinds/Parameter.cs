using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds;

/// <summary>Short ways to write a sheet's parameters.</summary>
internal static class Parameter
{
    public static KindParameter Of(string name, Dimension dimension, string doc, string? usual = null, string? least = null, string? most = null, bool required = false) =>
        new(name, ParameterType.Quantity, dimension, doc, required, usual, least, most);

    public static KindParameter Needed(string name, Dimension dimension, string doc, string? least = null, string? most = null) =>
        Of(name, dimension, doc, least: least, most: most, required: true);

    /// <summary>A count, or a number by which something is called.</summary>
    public static KindParameter Whole(string name, string doc, string? usual, string least, string most) =>
        Of(name, Dimension.One, doc, usual, least, most, required: usual is null) with { IsWhole = true };

    public static KindParameter Choice(string name, string doc, string usual, params ReadOnlySpan<string> choices) =>
        new(name, ParameterType.Choice, Dimension.One, doc, Default: usual, Choices: [.. choices]);

    public static KindParameter Item(string name, string doc, bool required = false) =>
        new(name, ParameterType.Item, Dimension.One, doc, required);

    public static KindParameter Items(string name, string doc) => new(name, ParameterType.Items, Dimension.One, doc);

    public static KindParameter Table(string name, string doc, params ReadOnlySpan<string> columns) =>
        new(name, ParameterType.Table, Dimension.One, doc, Choices: [.. columns]);
}
