using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Book.Rules;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Rules;

namespace Sightglass.Plant.Tests.Rules;

/// <summary>How rows find their numbers in a book.</summary>
public sealed class RuleCheckTests
{
    private const string Rules = """
        rules: Harbour rules
        edition: first
        quantities:
          working pressure: { shown in: psi }
          relief setting: { shown in: psi }
          greatest pipe pressure: { shown in: psi }
          pressure now: { shown in: psi }
          relief is set low: {}
        rows:
          1: { title: Relief, limit: 15 psi above., confidence: high, value: relief setting, at most: working pressure + 15 psi }
          2: { title: Pipe, limit: 90 psi., confidence: high, value: greatest pipe pressure, at least: 90 psi }
          3: { title: Low, limit: Not low., confidence: high, holds: not relief is set low }
          4: { title: Now, limit: 10 psi., confidence: high, value: pressure now, at least: 10 psi }
          5: { title: Care, limit: Looked at., confidence: high }
          6: { title: Falls, limit: 1 psi a minute., confidence: high, test: { begins when: pressure now < 50 psi, lasts: 1 min, average fall of: pressure now }, at most: 1 psi/min }

        """;

    private const string Items = """
        roles: { hand: { walks: 1 m/s } }
        places: { cab: { x: 1 m, y: 1.4 m } }
        items:
          tank of air: { kind: reservoir, volume: 100 L }
          pipe: { kind: reservoir, volume: 10 L }
          pop valve: { kind: safety valve, from: tank of air, diameter: 10 mm, opens at: 150 psi }
          brake handle: { kind: handle, positions: [release, full], who: [hand], places: [cab], for: Brakes., normal: Released. }
          feed: { kind: regulating valve, from: tank of air, to: pipe, diameter: 2 mm, exhaust diameter: 2 mm, set by: brake handle, pressures: { release: 90 psi, full: 60 psi } }

        """;

    private const string Measures = """
        measures:
          working pressure: 140 psi
          relief setting: opens at of pop valve
          greatest pipe pressure: max(pressures in release of feed, pressures in full of feed)
          pressure now: pressure of tank of air
          relief is set low: opens at of pop valve < 100 psi
        """;

    [Fact]
    public void Of_ABookThatMapsAll_EachRowHasItsVerdictAndNumber()
    {
        RuleFinding[] found = [.. RuleCheck.Of(Bind(Items + Measures))];
        Assert.Equal(
            [RuleVerdict.Kept, RuleVerdict.Kept, RuleVerdict.Kept, RuleVerdict.CannotBeTold, RuleVerdict.CannotBeTold, RuleVerdict.CannotBeTold], found.Select(f => f.Verdict));
        Assert.Equal(150, found[0].Row.Unit.FromSi(found[0].Value!.Value), 1e-9);
        Assert.Equal(155, found[0].Row.Unit.FromSi(found[0].AtMost!.Value), 1e-9);
        Assert.Equal("Measured in a run, because it changes as the machine runs: pressure now.", found[3].Why);
        Assert.Equal("It gives no number that a book holds: people judge it.", found[4].Why);
        Assert.Equal("Measured in a run, because it changes as the machine runs: pressure now.", found[5].Why);
    }

    /// <summary>Row 4 wants 10 psi: in a run it is held at every moment, and the first at which it is not kept is told with its number.</summary>
    [Theory]
    [InlineData(12, 11, RuleVerdict.Kept, 11, "Held at every moment from 0:00:00 to 0:00:09.")]
    [InlineData(12, 9, RuleVerdict.NotKept, 9, "As it stood at 0:00:05.")]
    public void Judge_AValueThatChanges_IsHeldAtEveryMoment(double before, double after, RuleVerdict verdict, double told, string why)
    {
        RuleTrace trace = new(Bind(Items + Measures));
        for (int t = 0; t < 10; t++)
        {
            double psi = t < 5 ? before : after;
            trace.Take(SimTime.FromSeconds(t), _ => psi * 6894.757293168361);
        }

        RuleFinding found = trace.Judge()[3];
        Assert.Equal((verdict, why), (found.Verdict, found.Why));
        Assert.Equal(told, found.Row.Unit.FromSi(found.Value!.Value), 1e-9);
        Assert.Equal(RuleVerdict.CannotBeTold, new RuleTrace(Bind(Items + Measures)).Judge()[3].Verdict);
    }

    [Fact]
    public void Of_ABookWithoutMeasures_NothingCanBeTold()
    {
        RuleFinding[] found = [.. RuleCheck.Of(Bind(Items))];
        Assert.All(found, f => Assert.Equal(RuleVerdict.CannotBeTold, f.Verdict));
        Assert.Equal("Not among the book's measures: relief setting, working pressure.", found[0].Why);
    }

    [Fact]
    public void Of_AnotherSetting_ChangesTheVerdict()
    {
        RuleFinding[] found = [.. RuleCheck.Of(Bind((Items + Measures).Replace("opens at: 150 psi", "opens at: 99 psi", StringComparison.Ordinal)))];
        Assert.Equal((RuleVerdict.Kept, RuleVerdict.NotKept), (found[0].Verdict, found[2].Verdict));
    }

    [Fact]
    public void Of_ARoadNumberWithAModification_HasItsOwnVerdict()
    {
        const string Numbers = """

            road numbers:
              "1": {}
              "2": { modifications: [ { name: M, changes: { pop valve: { opens at: 160 psi } } } ] }
            """;
        DiagnosticList found = [];
        ClassBook book = BookReader.Read([new SourceText("book.yaml", Plants.Head + Items + Measures + Numbers)], [], KindLibrary.Catalog, found)!;
        Fleet fleet = Fleet.Compile(book, found)!;
        Assert.Equal([RuleVerdict.Kept, RuleVerdict.NotKept], new[] { "1", "2" }.Select(n => RuleCheck.Of(RuleBinding.Of(Set(), fleet.For(n, null)!, []))[0].Verdict));
    }

    /// <summary>The engine knows no name of a book: with every name changed the verdicts and numbers stay.</summary>
    [Fact]
    public void Of_ARenamedBook_SameVerdictsAndNumbers()
    {
        string renamed = Items + Measures;
        foreach ((string name, string other) in new[] { ("tank of air", "bottle"), ("pop valve", "whistler"), ("pipe: {", "line: {"), ("to: pipe", "to: line"), ("feed", "reducer"), ("release", "off"), ("full", "on"), ("brake handle", "lever") })
        {
            renamed = renamed.Replace(name, other, StringComparison.Ordinal);
        }

        renamed = renamed.Replace("[off, on]", "[\"off\", \"on\"]", StringComparison.Ordinal);
        Assert.Equal(
            RuleCheck.Of(Bind(Items + Measures)).Select(f => (f.Row.Paragraph, f.Verdict, f.Value, f.AtLeast, f.AtMost, f.Why)),
            RuleCheck.Of(Bind(renamed)).Select(f => (f.Row.Paragraph, f.Verdict, f.Value, f.AtLeast, f.AtMost, f.Why)));
    }

    [Theory]
    [InlineData("relief setting: 3 m", "book.yaml:7:19: R020: `relief setting` is length here; the rules want pressure")]
    [InlineData("relief is set low: 3 psi", "book.yaml:7:22: R020: `relief is set low` is pressure here; the rules want something true or not")]
    [InlineData("releif setting: 3 psi", "book.yaml:7:3: R021 (note): no rule asks for `releif setting`; did you mean `relief setting`?")]
    public void Of_AMeasureThatDoesNotFit_IsTold(string measure, string told)
    {
        DiagnosticList found = [];
        RuleBinding.Of(Set(), Plants.Compile($"measures:\n  {measure}\n"), found);
        Assert.Equal(told, Assert.Single(found).ToString());
    }

    [Theory]
    [InlineData("a: opens at of pop vlave", "F007: unknown name `opens at of pop vlave`; did you mean `opens at of pop valve`?")]
    [InlineData("a: pressures in half of feed", "F007: unknown name `pressures in half of feed`; did you mean `pressures in full of feed`?")]
    [InlineData("a: 3 psi +", "F005")]
    [InlineData("a: []", "B032")]
    public void Compile_AMeasureThatCannotBeRead_IsAnErrorOfTheBook(string measure, string told)
    {
        DiagnosticList found = [];
        if (BookReader.Read([new SourceText("book.yaml", Plants.Head + Items + $"measures:\n  {measure}\n")], [], KindLibrary.Catalog, found) is { } book)
        {
            Assert.Null(PlanCompiler.Compile(book, found));
        }

        Assert.Contains(found, d => d.ToString().Contains(told, StringComparison.Ordinal));
    }

    /// <summary>A test is begun again after it was spoilt; one that is begun below where it should begin does not count; the run may end too soon.</summary>
    [Theory]
    [InlineData(200, "Measured from 0:00:10 to 0:01:10.")]
    [InlineData(60, "The run ended before the test that began at 0:00:10; it needs 60 s.")]
    [InlineData(5, "In this run the test never began.")]
    public void Judge_ARun_SaysFromWhenToWhen(int seconds, string why)
    {
        RuleTrace trace = new(Bind(Items + Measures));
        for (int t = 0; t <= seconds; t++)
        {
            double psi = t < 10 ? 60 : 49 - ((t - 10) * 0.5 / 60);
            trace.Take(SimTime.FromSeconds(t), _ => psi * 6894.757293168361);
        }

        RuleFinding finding = trace.Judge()[5];
        Assert.Contains(why, finding.Why.Replace('\u202F', ' '), StringComparison.Ordinal);
        Assert.Equal(seconds == 200 ? RuleVerdict.Kept : RuleVerdict.CannotBeTold, finding.Verdict);
        if (seconds == 200)
        {
            Assert.Equal(0.5, finding.Row.Unit.FromSi(finding.Value!.Value), 1e-9);
        }
    }

    [Fact]
    public void Judge_NoMoment_NothingCanBeTold() => Assert.Equal(RuleVerdict.CannotBeTold, new RuleTrace(Bind(Items + Measures)).Judge()[5].Verdict);

    private static RuleSet Set()
    {
        DiagnosticList found = [];
        RuleSet? set = RuleReader.Read([new SourceText("rules.yaml", Rules)], found);
        Assert.True(set is not null, string.Join('\n', found));
        return set;
    }

    private static RuleBinding Bind(string book) => RuleBinding.Of(Set(), Plants.Compile(book), []);
}
