using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Tests.Support;
using Sightglass.Trials.Recordings;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Tests.Recordings;

/// <summary>What columns are compared with: indications, formulas, positions, whether something is so.</summary>
public sealed class BoundRecordingTests
{
    private static readonly Plan s_plan = Books.Curlew;

    private static readonly ImmutableSortedDictionary<string, string> s_yesNo = ImmutableSortedDictionary<string, string>.Empty.Add("1", "yes").Add("0", "no");

    private static Situation Recorded => s_plan.Book.Situations["drill, hot engine as recorded"];

    [Fact]
    public void Bind_WhatFits_IsBoundInItsOwnWay()
    {
        BoundRecording bound = Good(Compared("main reservoir gauge", unit: "psi"), Compared("fill of aft compartment * 2", unit: "%"), Compared("throttle"), Compared("engine runs", words: s_yesNo));
        Assert.Equal(["", "", "idle", "no"], bound.Comparisons.Select(c => c.Words.FirstOrDefault() ?? ""));
    }

    [Theory]
    [InlineData("main reservoir gauge", "degF", "W032")]
    [InlineData("main reservoir gauge", null, "W032")]
    [InlineData("fill of aft compartment", "psi", "W032")]
    [InlineData("throttle", "psi", "W032")]
    [InlineData("engine runs", "psi", "W032")]
    [InlineData("main reservoir gage", "psi", "F007")]
    [InlineData("fill of (", "psi", "F007")]
    public void Bind_WhatDoesNotFit_IsTold(string compares, string? unit, string code)
    {
        DiagnosticList found = [];
        Assert.Null(BoundRecording.Bind(With([Compared(compares, unit, unit is null ? s_yesNo : null)]), s_plan, found));
        Assert.Contains(code, found.Select(d => d.Code));
    }

    [Fact]
    public void Agrees_NumbersAndWords_AsNearAsTheBookSays()
    {
        BoundComparison number = Good(Compared("main reservoir gauge", "psi") with { Within = UnitTable.Get("psi").ToSi(2) }).Comparisons[0];
        double at = UnitTable.Get("psi").ToSi(130);
        Assert.True(number.Agrees(at, at + UnitTable.Get("psi").ToSi(2)));
        Assert.False(number.Agrees(at, at - UnitTable.Get("psi").ToSi(2.1)));
        Assert.True(number.Agrees(double.NaN, at)); // nothing was recorded
        Assert.False(number.Agrees(at, double.NaN));
        BoundComparison word = Good(Compared("throttle")).Comparisons[0];
        Assert.True(word.Agrees(1, 1));
        Assert.False(word.Agrees(1, 2));
    }

    /// <summary>Each row is run as the case in which it is drawn: what is recorded is what the machine begins with.</summary>
    [Fact]
    public void Run_AtOnce_HasWhatWasRecorded()
    {
        Recording recording = Recorded.States!.Of!;
        RecordedColumn[] same = [.. recording.Columns.Select(c => c.Sets is [var only, ..] ? c with { Compares = new(only, Span.None), Within = c.Unit is null ? null : 1e-6 * c.Unit.Factor } : c with { Compares = null })];
        Recording looked = recording with { Columns = [.. same] };
        BoundRecording bound = BoundRecording.Bind(looked, s_plan, [])!;
        SituationStart start = SituationStart.Bind(s_plan, Recorded with { States = Recorded.States with { Of = looked } }, [])!;
        ImmutableArray<ComparedRow> rows = RecordingRun.Run(bound, start, [0, 7, 16], SimTime.Zero, new(1, 3));
        Assert.Equal([.. new[] { 0, 7, 16 }.Select(i => Recorded.States.Rows[i])], rows.Select(r => r.Row));
        Assert.All(rows, r => Assert.All(bound.Comparisons.Select((c, i) => (c, i)), c => Assert.True(c.c.Agrees(r.Recorded[c.i], r.Machine[c.i]), $"{c.c.Name}: {r.Recorded[c.i]} {r.Machine[c.i]}")));
    }

    /// <summary>Arithmetic: away by +1, −4 and nothing where nothing was recorded; one of two words is another.</summary>
    [Fact]
    public void Apart_OfRows_IsTheirMeanAndTheFurthest()
    {
        BoundRecording bound = Good(Compared("main reservoir gauge", "kPa") with { Within = 3000 }, Compared("throttle"));
        ComparedRow[] rows = [new(0, [5000, 1], [6000, 1], null), new(1, [9000, 1], [5000, 2], null), new(2, [double.NaN, double.NaN], [7000, 2], null), new(3, [5000, 1], [double.NaN, double.NaN], "it does not run")];
        RecordingReport report = new(bound, new("r", Span.None), null, SimTime.Zero, [.. rows]);
        ColumnApart number = report.Apart[0], word = report.Apart[1];
        Assert.Equal((2, 2, -1500.0, -4000.0, rows[1]), (number.Rows, number.Further, number.Mean, number.Greatest, number.At)); // the row that did not run counts as further away
        Assert.Equal((2, 2, rows[1]), (word.Rows, word.Further, word.At));
        Assert.False(report.Agrees);
    }

    private static RecordedColumn Compared(string compares, string? unit = null, ImmutableSortedDictionary<string, string>? words = null) =>
        new("Head", Span.None) { Compares = new(compares, new SourceText("a.yaml", compares).Between(0, compares.Length)), Unit = unit is null ? null : UnitTable.Get(unit), As = words ?? ImmutableSortedDictionary<string, string>.Empty };

    private static Recording With(ImmutableArray<RecordedColumn> columns) => new("r", Span.None) { Columns = columns };

    private static BoundRecording Good(params ReadOnlySpan<RecordedColumn> columns)
    {
        DiagnosticList found = [];
        return BoundRecording.Bind(With([.. columns]), s_plan, found) ?? throw new InvalidOperationException(string.Join('\n', found));
    }
}
