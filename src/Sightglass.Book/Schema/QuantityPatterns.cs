using System.Text;
using Sightglass.Basics.Quantities;

namespace Sightglass.Book.Schema;

/// <summary>
/// Regular expressions for values with units, in the dialect that JSON Schema names (ECMA-262 with the flag u): what the reader takes, they take.
/// A range with its ends in the wrong order, or a composed unit of another dimension, only the reader finds.
/// </summary>
internal static class QuantityPatterns
{
    private const string Number =
        @"[-+\u2212]?\s*(?:\d[\d\u2009\u202F]*(?:\.\d+)?(?:[eE][-+\u2212]?\d+)?(?:[¼½¾⅛⅜⅝⅞]|[ \u00A0]+\d+[/\u2044]\d+|[/\u2044]\d+)?|\.\d+(?:[eE][-+\u2212]?\d+)?|[¼½¾⅛⅜⅝⅞])";

    /// <summary>Up to four units with <c>/</c> or <c>·</c> between them.</summary>
    private const string Composed = @"[^\s\d./·][^/·]*(?:[/·][^/·]+){1,3}";

    public static string Value(Dimension dimension) => $@"^\s*{Number}\s*{Unit(dimension)}\s*$";

    /// <summary>A value, or two with dots between them, of which the first may leave its unit out.</summary>
    public static string Range(Dimension dimension) =>
        $@"^\s*(?:{Number}\s*(?:{Unit(dimension)})?\s*(?:\.\.|…)\s*)?{Number}\s*{Unit(dimension)}\s*$";

    /// <summary>A range of anything.</summary>
    public static string AnyRange() => $@"^\s*{Number}[^.…]*(?:\.\.|…)\s*{Number}.*$";

    private static string Unit(Dimension dimension)
    {
        IEnumerable<string> listed = UnitTable.SpellingsOf(dimension).OrderByDescending(s => s.Length).ThenBy(s => s, StringComparer.Ordinal).Select(Escape);
        string all = string.Join('|', [.. listed, Composed]);
        return dimension == Dimension.One ? $"(?:{all})?" : $"(?:{all})";
    }

    /// <summary>Escapes only what must be: with the flag u, other escapes are errors.</summary>
    private static string Escape(string symbol)
    {
        StringBuilder text = new();
        foreach (char c in symbol)
        {
            if (@"^$\.*+?()[]{}|/".Contains(c, StringComparison.Ordinal))
            {
                text.Append('\\');
            }

            text.Append(c == ' ' ? @"\s+" : c.ToString());
        }

        return text.ToString();
    }
}
