using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Plant.Calculators.Sheets;

namespace Sightglass.Web.Calculators;

/// <summary>What stands in a calculator before anything is typed: what the book knows of its machine, else the calculator's own examples.</summary>
internal static class CalculatorStart
{
    /// <summary>Which input a parameter of which kind of equipment answers; the first item of the kind counts.</summary>
    private static readonly (string Sheet, string Input, string Kind, string Parameter)[] s_known =
    [
        ("battery", "capacity", "battery", "capacity"),
        ("battery", "inner", "battery", "inner resistance"),
        ("fill time", "flow", "fill port", "flow"),
        ("fuel rate", "density", "engine", "density"),
        ("range left", "density", "engine", "density"),
    ];

    /// <summary>Values by the names of the inputs.</summary>
    public static IReadOnlyDictionary<string, string> Of(CalculatorSheet sheet, ClassBook book) =>
        sheet.Inputs.ToDictionary(i => i.Name, i => FromBook(sheet, i, book) ?? i.Example, StringComparer.Ordinal);

    private static string? FromBook(CalculatorSheet sheet, CalculatorValue input, ClassBook book)
    {
        (string _, string name, string kind, string parameter) = s_known.FirstOrDefault(k => k.Sheet == sheet.Name && k.Input == input.Name);
        ParameterValue? known = name is null ? null : book.Items.Values.Where(i => i.Kind.Name == kind).Select(i => i.Parameters.GetValueOrDefault(parameter)).FirstOrDefault(p => p is not null);
        return known?.Unit is { } unit ? FormattableString.Invariant($"{Math.Round(unit.FromSi(known.Number), 6)} {unit.Symbol}") : null;
    }
}
