using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Cards.Parsing;

namespace Sightglass.Cards.Programs;

/// <summary>
/// The numbers written down by a card's Read sentences, in the order of first use; calculations are read in their scope. A card that is
/// called has names of its own, numbered on in the same row.
/// </summary>
internal sealed class WrittenNames : INameScope
{
    private readonly List<WrittenName> _all;
    private readonly Dictionary<string, FormulaName> _own = new(StringComparer.Ordinal);

    public WrittenNames() : this([])
    {
    }

    private WrittenNames(List<WrittenName> all) => _all = all;

    /// <summary>Of this card and of those it calls.</summary>
    public ImmutableArray<WrittenName> All => [.. _all];

    public IEnumerable<string> Names => _own.Keys;

    public bool TryGet(string name, out FormulaName found) => _own.TryGetValue(name, out found);

    /// <summary>The names of a card that this one calls.</summary>
    public WrittenNames OfCalled() => new(_all);

    /// <summary>The index of a name, made when it is new.</summary>
    public int IndexOf(WrittenName name)
    {
        if (_own.TryAdd(name.Name, new(name.Name, name.Unit.Dimension, _all.Count, PreferredUnit: name.Unit)))
        {
            _all.Add(name);
        }

        return _own[name.Name].Id;
    }

    public WrittenName? Find(string name) => _own.TryGetValue(name, out FormulaName found) ? _all[found.Id] : null;

    /// <summary>The name whose instrument's unit and digits a calculation is said in.</summary>
    public WrittenName? FirstIn(string text) => CalculationReader.NamesIn(text).Select(Find).FirstOrDefault(n => n is not null);

    /// <summary>Reads a calculation, or reports why it cannot be one.</summary>
    public ReadingExpression? Read(string text, Span span, DiagnosticList found)
    {
        foreach (string name in CalculationReader.NamesIn(text).Where(n => Find(n) is null))
        {
            found.Add(CardMessages.NotWrittenDown(span, name.Length == 0 ? text : name, Nearest.Find(name, Names)));
            return null;
        }

        DiagnosticList own = [];
        Formula? formula = FormulaParser.Parse(text, span, this, own, FormulaKind.AnyValue);
        if (formula is not null)
        {
            return new(formula);
        }

        found.Add(CardMessages.NotACalculation(span, text, own.FirstOrDefault()?.Message ?? "it has no value"));
        return null;
    }
}
