using Sightglass.Book.Model;

namespace Sightglass.Plant.Kinds;

/// <summary>Short ways to an item's parameters (SI; the reader has filled in the sheet's defaults).</summary>
internal static class ItemValues
{
    public static double? Find(this Item item, string name) =>
        item.Parameters.TryGetValue(name, out ParameterValue? value) ? value.Number : null;

    /// <exception cref="KeyNotFoundException">Neither given nor defaulted: the sheet should have asked for it.</exception>
    public static double Get(this Item item, string name) =>
        item.Find(name) ?? throw new KeyNotFoundException($"'{item.Name}' has no '{name}'.");

    public static string Text(this Item item, string name) =>
        item.Parameters.TryGetValue(name, out ParameterValue? value) ? value.Text : "";
}
