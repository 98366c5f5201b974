using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;

namespace Sightglass.Book.Readers;

/// <summary>Values that stand as text in a kind sheet: defaults and limits.</summary>
internal static class ParameterTexts
{
    /// <summary>The default of a parameter as a value.</summary>
    /// <exception cref="InvalidOperationException">The sheet's default does not read: a defect of the sheet.</exception>
    public static ParameterValue Default(KindParameter p)
    {
        string text = p.Default ?? throw new InvalidOperationException($"`{p.Name}` has no default.");
        return p.Type switch
        {
            ParameterType.Quantity => Quantity(p, text) is var q ? new(Span.None) { Number = q.Si, Unit = q.Unit, Text = text } : null!,
            ParameterType.YesNo => new(Span.None) { Text = text, Number = text == "yes" ? 1 : 0 },
            ParameterType.Item => new(Span.None) { Text = text, Names = [text] },
            _ => new(Span.None) { Text = text },
        };
    }

    /// <summary>The parameters of an item that says nothing of its own.</summary>
    public static ImmutableSortedDictionary<string, ParameterValue> Defaults(KindSheet kind) =>
        kind.Parameters.Where(p => p.Default is not null).ToImmutableSortedDictionary(p => p.Name, Default, StringComparer.Ordinal);

    public static bool IsWithin(KindParameter p, double si) =>
        !(p.IsWhole && si != Math.Floor(si)) && !(p.Minimum is { } low && si < Quantity(p, low).Si) && !(p.Maximum is { } high && si > Quantity(p, high).Si);

    public static string Limits(KindParameter p) => (p.IsWhole ? "a whole number, " : "") + ((p.Minimum, p.Maximum) switch
    {
        ({ } low, { } high) => $"{low} to {high}",
        ({ } low, null) => $"at least {low}",
        (null, { } high) => $"at most {high}",
        _ => "any value",
    });

    /// <summary>What could be written for a parameter, for messages.</summary>
    public static string Example(KindParameter p) => p.Default ?? p.Minimum ?? p.Type switch
    {
        ParameterType.Choice when !p.Choices.IsDefaultOrEmpty => p.Choices[0],
        ParameterType.YesNo => "yes",
        ParameterType.Item => "ITEM",
        ParameterType.Items => "[ ITEM, … ]",
        ParameterType.Pins => "{ 1: WIRE }",
        ParameterType.Formula => "FORMULA",
        ParameterType.Quantity => p.Dimension == Dimension.One ? "NUMBER" : $"VALUE {UnitTable.SymbolsOf(p.Dimension).FirstOrDefault() ?? "UNIT"}",
        ParameterType.Table => "[ … ]",
        ParameterType.ByPosition => "{ POSITION: … }",
        _ => "…",
    };

    public static Quantity Quantity(KindParameter p, string text)
    {
        DiagnosticList notes = [];
        return QuantityText.TryParse(text, Span.None, p.Dimension, notes, out Quantity q)
            ? q
            : throw new InvalidOperationException($"The kind sheet gives `{text}` for `{p.Name}`: {string.Join("; ", notes)}");
    }
}
