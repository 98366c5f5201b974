using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Cli.Runs;

/// <summary>
/// Finds what <c>--show</c> names: an indication (as it shows), a control (its position), a fact or a sign (whether it holds), a true
/// quantity, or any formula of these.
/// </summary>
internal sealed class ColumnFinder(Plan plan)
{
    /// <summary>Asks for everything that has a name.</summary>
    public const string All = "all";

    /// <summary>The columns of what was asked for; findings where something is no name and no formula.</summary>
    public List<Column> Find(IEnumerable<string> names, DiagnosticList found)
    {
        List<Column> columns = [];
        foreach (string name in names)
        {
            if (name == All)
            {
                columns.AddRange(Everything());
            }
            else if (OfItem(name) is { } item)
            {
                columns.Add(item);
            }
            else if (plan.Signs.TryGetValue(name, out Signal? sign))
            {
                columns.Add(Condition(name, sign));
            }
            else if (OfFormula(name, found) is { } formula)
            {
                columns.Add(formula);
            }
        }

        return columns;
    }

    /// <summary>What is shown where nothing is asked for: every indication, or every true quantity of a book without any.</summary>
    public List<Column> Usual()
    {
        List<Column> indications = [.. plan.Items.Values.Where(i => i.Item.Reading is not null && i.Shown is not null).Select(i => OfItem(i.Item.Name)!)];
        return indications.Count > 0 ? indications : [.. Scoped()];
    }

    private IEnumerable<Column> Everything() =>
        plan.Items.Keys.Select(OfItem).OfType<Column>().Concat(plan.Signs.Select(s => Condition(s.Key, s.Value))).Concat(Scoped());

    private IEnumerable<Column> Scoped() => plan.Scope.Names.Select(n => OfFormula(n, [])).OfType<Column>();

    private Column? OfItem(string name)
    {
        if (!plan.Items.TryGetValue(name, out ItemPlan? item))
        {
            return null;
        }

        if (item.Item.Reading is { } reading && item.Shown is not null)
        {
            return new(name, reading.Unit, ColumnSort.Quantity, [], reading.Resolution, world => world.Read(item.Item) ?? double.NaN);
        }

        if (item.Lit is { } lit)
        {
            return Condition(name, lit);
        }

        return item.Position is { } slot ? new(name, UnitTable.One, ColumnSort.Position, item.Item.Positions, null, world => world.GetSlot(slot)) : null;
    }

    private Column? OfFormula(string text, DiagnosticList found)
    {
        if (FormulaParser.Parse(text, new SourceText("--show", text).Between(0, text.Length), plan.Scope, found, FormulaKind.Any) is not { } formula)
        {
            return null;
        }

        FormulaSignal signal = new(formula);
        return formula.IsCondition ? Condition(text, signal) : new(text, UnitOf(formula.Dimension), ColumnSort.Quantity, [], null, world => world.Value(signal)) { IsTruth = true };
    }

    private Unit UnitOf(Dimension dimension) => plan.Book.ShownIn.GetValueOrDefault(dimension) ?? UnitTable.SiOf(dimension);

    private static Column Condition(string name, Signal margin) =>
        new(name, UnitTable.One, ColumnSort.Condition, [], null, world => world.Value(margin) >= 0 ? 1 : 0);
}
