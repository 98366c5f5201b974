using System.Collections.Immutable;
using System.Xml.Linq;

namespace Sightglass.Paper.Vectors;

/// <summary>One rule of the look's drawing classes: what it is for, and what it says.</summary>
/// <param name="Parts">The compound selectors from the outermost to the element itself, each a type, classes and attributes.</param>
/// <param name="Says">Property and value.</param>
internal sealed record StyleRule(ImmutableArray<ImmutableArray<string>> Parts, ImmutableArray<(string Name, string Value)> Says)
{
    /// <summary>The more is asked of an element, the more a rule weighs.</summary>
    public int Weight { get; } = Parts.Sum(p => p.Sum(s => s[0] is '.' or '[' ? 10 : 1));

    /// <summary>Whether an element within its ancestors is meant.</summary>
    public bool Means(XElement element)
    {
        if (!Matches(Parts[^1], element))
        {
            return false;
        }

        int part = Parts.Length - 2;
        for (XElement? above = element.Parent; above is not null && part >= 0; above = above.Parent)
        {
            part -= Matches(Parts[part], above) ? 1 : 0;
        }

        return part < 0;
    }

    private static bool Matches(ImmutableArray<string> compound, XElement element) => compound.All(s => s[0] switch
    {
        '*' => true,
        '.' => ((string?)element.Attribute("class"))?.Split(' ').Contains(s[1..], StringComparer.Ordinal) == true,
        '[' => s[1..^1].Split('=') is [var name, var value] && (string?)element.Attribute(name) == value,
        _ => element.Name.LocalName == s,
    });
}
