using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>Keys of a new entry, gathered in order; those with nothing to say are left out.</summary>
internal sealed class NewEntry
{
    private readonly ImmutableArray<YamlEntry>.Builder _keys = ImmutableArray.CreateBuilder<YamlEntry>();

    public YamlMap Map => new(default, _keys.ToImmutable());

    /// <summary>An amount so that it is read back to the last bit but one: <c>12.5 mm</c>.</summary>
    public static string Amount(double si, Unit? unit)
    {
        string number = (unit ?? UnitTable.One).FromSi(si).ToString("R", CultureInfo.InvariantCulture);
        return unit is null || unit.Symbol is "1" ? number : $"{number} {unit.Symbol}";
    }

    /// <summary>Seconds in whole minutes where they are.</summary>
    public static string Time(double seconds) =>
        string.Create(CultureInfo.InvariantCulture, $"{(seconds >= 60 && seconds % 60 == 0 ? seconds / 60 : seconds):0.###} {(seconds >= 60 && seconds % 60 == 0 ? "min" : "s")}");

    public NewEntry Text(string key, string text) => text.Length == 0 ? this : Node(key, NodeText.Text(text));

    public NewEntry Texts(string key, IEnumerable<string> texts) => List(key, texts.Select(NodeText.Text));

    /// <summary>Nothing where it says what it says by itself.</summary>
    public NewEntry YesNo(string key, bool yes, bool usual) => yes == usual ? this : Text(key, yes ? "yes" : "no");

    public NewEntry List(string key, IEnumerable<YamlNode> items) => items.ToImmutableArray() is { IsEmpty: false } list ? Node(key, new YamlList(default, list)) : this;

    public NewEntry Maps<T>(string key, IEnumerable<T> items, Func<T, (string Name, YamlNode Value)> of) =>
        items.Select(of).ToArray() is { Length: > 0 } all ? Node(key, NodeText.Map(all)) : this;

    public NewEntry Node(string key, YamlNode value)
    {
        _keys.Add(new(NodeText.Text(key), value));
        return this;
    }
}
