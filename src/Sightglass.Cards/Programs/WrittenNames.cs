using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Cards.Parsing;

namespace Sightglass.Cards.Programs;

/// <summary>The numbers written down by a card's Read sentences, in the order of first use; calculations are read in their scope.</summary>
internal sealed class WrittenNames
{
    private readonly List<WrittenName> _names = [];
    private readonly NameTable _table = new();

    public ImmutableArray<WrittenName> All => [.. _names];

    /// <summary>The index of a name, made when it is new.</summary>
    public int IndexOf(WrittenName name)
    {
        int id = _table.AddValue(name.Name, name.Unit.Dimension, name.Unit);
        if (id == _names.Count)
        {
            _names.Add(name);
        }

        return id;
    }

    public WrittenName? Find(string name) => _table.TryGet(name, out FormulaName found) ? _names[found.Id] : null;

    /// <summary>The name whose instrument's unit and digits a calculation is said in.</summary>
    public WrittenName? FirstIn(string text) => CalculationReader.NamesIn(text).Select(Find).FirstOrDefault(n => n is not null);

    /// <summary>Reads a calculation, or reports why it cannot be one.</summary>
    public ReadingExpression? Read(string text, Span span, DiagnosticList found)
    {
        foreach (string name in CalculationReader.NamesIn(text).Where(n => Find(n) is null))
        {
            found.Add(CardMessages.NotWrittenDown(span, name.Length == 0 ? text : name, Nearest.Find(name, _table.Names)));
            return null;
        }

        DiagnosticList own = [];
        Formula? formula = FormulaParser.Parse(text, span, _table, own, FormulaKind.AnyValue);
        if (formula is not null)
        {
            return new(formula);
        }

        found.Add(CardMessages.NotACalculation(span, text, own.FirstOrDefault()?.Message ?? "it has no value"));
        return null;
    }
}
