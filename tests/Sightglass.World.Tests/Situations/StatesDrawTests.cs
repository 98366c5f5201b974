using System.Collections.Immutable;
using CsCheck;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Tests.Support;
using Sightglass.World.Situations;

namespace Sightglass.World.Tests.Situations;

/// <summary>What is drawn from recorded rows: a row as a whole, the same for the same case, and nothing else moves by it.</summary>
public sealed class StatesDrawTests
{
    private const string Name = "drill, hot engine as recorded";

    private static readonly Plan s_plan = Books.Curlew;

    private static Situation Recorded => s_plan.Book.Situations[Name];

    [Fact]
    public void Apply_AnyCase_HasOneRowAsAWhole()
    {
        SituationStart start = Bind(Recorded);
        Recording recording = Recorded.States!.Of!;
        Gen.Select(Gen.ULong[0, 1000], Gen.ULong[0, 1000]).Holds((seed, one) =>
        {
            CaseDraws draws = new(seed, one);
            double[] have = Started(start, draws);
            string label = start.Ranges.Single(r => r.Order == SituationStart.RowOrder).Say(draws);
            int row = recording.Table!.Labels.IndexOf(label);
            Assert.Contains(row, Recorded.States.Rows);
            Assert.Equal(Values(recording, row), have);
        });
    }

    /// <summary>The recording's rows are told apart by water and oil together; independent draws would give pairs that never stood on the machine.</summary>
    [Fact]
    public void Apply_ManyCases_GivesEveryRowAndNoPairBetween()
    {
        SituationStart start = Bind(Recorded);
        Recording recording = Recorded.States!.Of!;
        (double Water, double Oil)[] recorded = [.. Recorded.States.Rows.Select(r => Values(recording, r)).Select(v => (v[0], v[1]))];
        (double Water, double Oil)[] drawn = [.. Enumerable.Range(0, 400).Select(i => Started(start, new(3, (ulong)i))).Select(v => (v[0], v[1]))];
        Assert.Equal(recorded.Distinct().Order(), drawn.Distinct().Order());
    }

    [Fact]
    public void Apply_SameCaseTwice_IsTheSame()
    {
        SituationStart start = Bind(Recorded);
        Assert.Equal(Started(start, new(9, 4)), Started(Bind(Recorded), new(9, 4)));
    }

    [Fact]
    public void Ranges_WithStatesOrWithout_DrawTheSame()
    {
        ImmutableArray<DrawnRange> with = Bind(Recorded).Ranges, without = Bind(Recorded with { States = null }).Ranges;
        Assert.Equal(SituationStart.RowOrder, with[0].Order);
        CaseDraws draws = new(5, 6);
        Assert.Equal(without.Select(r => (r.Name, r.Value(draws))), with.Skip(1).Select(r => (r.Name, r.Value(draws))));
    }

    [Fact]
    public void Bind_RecordedValueThatNoStoreCanHold_IsW018AtItsField()
    {
        Recording recording = Recorded.States!.Of!;
        RecordedTable table = recording.Table!;
        int fuel = recording.Columns.IndexOf(recording.Columns.Single(c => c.Sets.Contains("fill of aft compartment")));
        int row = Recorded.States.Rows[0];
        RecordedValues values = table.Columns[fuel] with { Numbers = table.Columns[fuel].Numbers.SetItem(row, 1.2) };
        Diagnostic only = Assert.Single(Refused(Recorded with { States = Recorded.States with { Of = recording with { Table = table with { Columns = table.Columns.SetItem(fuel, values) } } } }));
        Assert.Equal(("W018", values.SpanOf(row).ToString()), (only.Code, only.Span.ToString()));
        Assert.Contains("`fill of aft compartment` cannot be 120 %", only.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fill of aft compartment", -0.1)]
    [InlineData("fill of aft compartment", 1.01)]
    [InlineData("pressure of brake pipe", -200_000)]
    [InlineData("temperature of cooling water", -1)]
    public void Bind_StartingValueThatNoStoreCanHold_IsW018(string name, double value)
    {
        StartRule rule = s_plan.Starts[name];
        Situation wrong = new() { Name = "wrong", Span = Span.None, Start = [new StartValue(name, Span.None) { From = value, To = value, Unit = Sightglass.Basics.Quantities.UnitTable.SiOf(rule.Dimension) }] };
        Assert.Equal("W018", Assert.Single(Refused(wrong)).Code);
    }

    [Fact]
    public void Bind_FileThatWasNotRead_IsW019()
    {
        Situation unread = Recorded with { States = Recorded.States! with { Of = Recorded.States.Of! with { Table = null }, Rows = [] } };
        Assert.Equal("W019", Assert.Single(Refused(unread)).Code);
    }

    private static double[] Values(Recording recording, int row) =>
        [Math.Round(recording.Table!.Columns[2].Numbers[row], 9), Math.Round(recording.Table.Columns[3].Numbers[row], 9), recording.Table.Columns[0].Numbers[row], recording.Table.Columns[4].Numbers[row]];

    /// <summary>Water and oil from their stores, speed and the air outside from their slots.</summary>
    private static double[] Started(SituationStart start, CaseDraws draws)
    {
        using LaneBank bank = new(start.Plan);
        World world = new(bank, 0);
        start.Apply(world, draws);
        return [Temperature("temperature of cooling water"), Temperature("temperature of engine oil"), world.GetSlot(start.Plan.Starts["speed"].Slot), world.GetSlot(start.Plan.Starts["ambient temperature"].Slot)];

        double Temperature(string name)
        {
            StartRule rule = start.Plan.Starts[name];
            return Math.Round(world.GetAmount(rule.Network, rule.Amount) / rule.ToAmount!(1), 9);
        }
    }

    private static SituationStart Bind(Situation situation)
    {
        DiagnosticList found = [];
        return SituationStart.Bind(s_plan, situation, found) ?? throw new InvalidOperationException(string.Join('\n', found));
    }

    private static DiagnosticList Refused(Situation situation)
    {
        DiagnosticList found = [];
        Assert.Null(SituationStart.Bind(s_plan, situation, found));
        return found;
    }
}
