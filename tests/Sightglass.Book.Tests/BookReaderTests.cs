using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Samples;

namespace Sightglass.Book.Tests;

public class BookReaderTests
{
    private static readonly ClassBook s_heron = SampleBook.Good(SampleBook.Text);

    [Fact]
    public void Read_GoodBook_FindsNothing() => Assert.Empty(SampleBook.Read(SampleBook.Text).Found);

    [Fact]
    public void Read_Head_TakesTitleSizeAndUnits()
    {
        Assert.Equal(("Heron", "2", "Saltmarsh & Northern"), (s_heron.Title, s_heron.Edition, s_heron.Railroad));
        Assert.Equal((18.5, 3.0, Side.Right), (s_heron.Length, s_heron.Width, s_heron.WalkStart));
        Assert.Equal("US gal", s_heron.ShownIn[Dimension.Volume].Symbol);
    }

    /// <summary>The surroundings have limits where more would make no sense; at the limit itself nothing is said.</summary>
    [Theory]
    [InlineData("200 mph", null)]
    [InlineData("0 mph .. 201 mph", "`speed` is `0 mph .. 201 mph`; it must be between 0 mph and 200 mph")]
    [InlineData("-1 mph", "`speed` is `-1 mph`; it must be between 0 mph and 200 mph")]
    public void Read_SpeedOfASituation_WithinItsLimits(string speed, string? says)
    {
        DiagnosticList found = SampleBook.Read(SampleBook.Text.Replace("head-end load: 0 .. 100 %", $"speed: {speed}", StringComparison.Ordinal)).Found;
        Assert.Equal(says is null ? [] : [("B039", says)], found.Select(d => (d.Code, $"{d.Message}; {d.Fix}")));
    }

    [Fact]
    public void Read_Places_KnowWhetherTheyAreOnTheGround()
    {
        Assert.True(s_heron.Places["fuel panel, left"].OnGround);
        Assert.False(s_heron.Places["cab"].OnGround);
        Leg leg = Assert.Single(s_heron.Legs);
        Assert.Equal(("cab door, right", "cab", 12.0, "steps"), (leg.From, leg.To, leg.Seconds, leg.By));
    }

    [Fact]
    public void Read_Roles_TellNowhereFromEverywhere()
    {
        Assert.False(s_heron.Roles["engineer"].IsBound);
        Assert.True(s_heron.Roles["mechanical desk"] is { IsBound: true, Reaches.Length: 0 });
        Assert.Equal(3, s_heron.Roles["mechanical"].Reaches.Length);
    }

    [Fact]
    public void Read_Tank_TakesParametersDefaultsAndPorts()
    {
        Item tank = s_heron.Items["forward compartment"];
        Assert.Equal(2.0, tank.Parameters["floor area"].Number);
        Assert.Equal(5e-4, tank.Parameters["vent area"].Number, 1e-12);
        Assert.Equal("prismatic", tank.Parameters["shape"].Text);
        Assert.Equal(0.04, tank.Ports["supply pickup"].Height, 1e-12);
        Assert.Null(tank.Ports["drain"].X);
        Assert.Equal("A box, so that a centimetre is worth the same at every level.", tank.Texts.Know);
        Assert.Equal(SignalWord.Caution, Assert.Single(tank.Cautions).Word);
    }

    [Fact]
    public void Read_Table_TakesRowsByNameAndInOrder()
    {
        ParameterValue table = s_heron.Items["aft compartment"].Parameters["dip table"];
        Assert.Equal([[0, 0], [0.4, 0.7], [0.8, 1.5]], table.Rows.Select(r => r.Select(v => Math.Round(v, 9)).ToArray()));
    }

    [Theory]
    [InlineData("forward supply valve", "forward compartment", "supply pickup")]
    [InlineData("forward drain cock", "forward compartment", "drain")]
    [InlineData("fuel pump", "supply header", null)]
    public void Read_From_SplitsItemAndPort(string path, string item, string? port)
    {
        PortReference from = s_heron.Items[path].From!;
        Assert.Equal((item, port), (from.Item, from.Port));
    }

    [Fact]
    public void Read_PortWithCommaInItsName_IsSplitAtTheCommaThatFits()
    {
        Item fill = s_heron.Items["forward fill port, right"];
        Assert.Null(fill.From);
        Assert.Equal(("forward compartment", "fill, right"), (fill.To!.Item, fill.To.Port));
    }

    [Fact]
    public void Read_Control_TakesPositionsAndAuthority()
    {
        Item valve = s_heron.Items["forward supply valve"];
        Assert.Equal(["closed", "open"], valve.Positions);
        Assert.Equal("open", valve.UsualPosition);
        Assert.Equal(["mechanical", "engineer"], valve.Authority!.Who);
        Assert.Null(valve.Authority.Permission);
        Assert.Equal(4, valve.OperateSeconds);
        Assert.Equal("engineer", s_heron.Items["aft supply valve"].Authority!.Permission);
        Assert.Equal(["idle", "notch 1", "notch 2"], s_heron.Items["throttle"].Positions);
        Assert.Equal("stopped", s_heron.Items["engine"].UsualPosition);
    }

    [Fact]
    public void Read_ByPosition_TakesSiValues() =>
        Assert.Equal(60e-3 / 3600, s_heron.Items["engine"].Parameters["consumption"].ByPosition["notch 1"], 1e-12);

    [Fact]
    public void Read_Gauge_TakesFormulaScaleAndWords()
    {
        Reading gauge = s_heron.Items["fuel gauge"].Reading!;
        Assert.Equal("(volume of forward compartment + volume of aft compartment) / 3000 L", gauge.Formula);
        Assert.Equal(gauge.Formula, gauge.Span.Text);
        Assert.Equal((0, 1, 0.01), (gauge.Minimum, gauge.Maximum, gauge.Resolution));
        Assert.Equal((0.3, 1.0), (gauge.NormalFrom, gauge.NormalTo));
        Assert.Equal((0, 0.25), gauge.Words["low"]);
        Assert.Equal("%", gauge.Unit.Symbol);
    }

    [Fact]
    public void Read_SightGlassWithoutScale_ShowsFromBottomToTop()
    {
        Reading glass = SampleBook.Good(SampleBook.Text.Replace("    scale: 5 cm .. 85 cm\n", "", StringComparison.Ordinal)).Items["forward sight glass, right"].Reading!;
        Assert.Equal((0.05, 0.85, "mm"), (glass.Minimum, glass.Maximum, glass.Unit.Symbol));
    }

    [Fact]
    public void Read_Lamp_HasNoScale()
    {
        Item lamp = s_heron.Items["running lamp"];
        Assert.Null(lamp.Reading);
        Assert.Equal("running of engine", lamp.Parameters["lit when"].Text);
    }

    [Fact]
    public void Read_ItemWithoutKind_IsDescribed() => Assert.Equal("described", s_heron.Items["horn"].Kind.Name);

    [Fact]
    public void Read_Truths_KeepFormulasWithTheirPlaces()
    {
        Sign sign = s_heron.Signs["fuel is seen below the forward compartment"];
        Assert.Equal(("seen", "leak flow of forward compartment > 0.05 L/min"), (sign.Sense, sign.FormulaSpan.Text));
        Hazard hazard = s_heron.Hazards["between vehicles"];
        Assert.Equal((null, "going between", SignalWord.Warning), (hazard.Formula, hazard.Protection, hazard.Caution.Word));
        Assert.Equal("running of engine", s_heron.Facts["engine runs"].Formula);
    }

    [Fact]
    public void Read_Situation_TakesFixedRangesChoicesAndFaults()
    {
        Situation s = s_heron.Situations["leaking compartment"];
        Dictionary<string, StartValue> start = s.Start.ToDictionary(v => v.Name);
        Assert.Equal(0.3, start["fill of forward compartment"].From, 1e-12);
        Assert.Equal(0.95, start["fill of forward compartment"].To, 1e-12);
        Assert.Equal((0.4, 0.4), (start["level of aft compartment"].From, start["level of aft compartment"].To));
        Assert.Equal(["idle", "notch 1", "notch 2"], start["throttle"].OneOf);
        Assert.Equal(["open"], start["aft supply valve"].OneOf);
        Assert.Equal(["fuel panel, right", "cab door, right"], s.People[0].Places);
        FaultStart leak = s.Faults[0];
        Assert.Equal((0, 600), (leak.AfterFrom, leak.AfterTo));
        Assert.Equal(0.8, leak.Chance, 1e-12);
        Assert.Equal(0.03, leak.Values.Single(v => v.Name == "diameter").To, 1e-12);
        Assert.Equal(1, s.Faults[1].Chance);
    }

    [Fact]
    public void Read_Silhouette_KeepsPathsAndLettering()
    {
        Silhouette right = Assert.Single(s_heron.Silhouettes);
        Assert.Equal(("outline", null), (right.Shapes[0].Style, right.Shapes[0].Text));
        Assert.Equal("SALTMARSH & NORTHERN", right.Shapes[1].Text);
    }

    [Fact]
    public void Read_SectionsInSeveralFiles_ArePutTogether()
    {
        ClassBook book = SampleBook.Good("book: A\nplaces:\n  yard: { x: 1 m, y: 2 m }\n", "places:\n  shed: { x: 2 m, y: 2 m }\n---\nroles:\n  hand: {}\n");
        Assert.Equal(["shed", "yard"], book.Places.Keys);
        Assert.Single(book.Roles);
    }

    [Fact]
    public void Read_StrangersMinimalBook_IsGood()
    {
        ClassBook book = SampleBook.Good("book: S\nitems:\n  tank:\n    kind: tank\n    floor area: 1 m^2\n    depth: 1 m\n  hole:\n    kind: orifice\n    from: tank\n    to: outside\n    diameter: 20 mm\n");
        Assert.Equal(PortReference.Outside, book.Items["hole"].To!.Item);
    }

    [Fact]
    public void Read_CardTexts_AreKeptUnread()
    {
        SourceText card = new("cards/a.card", "Card: A\n");
        ClassBook? book = BookReader.Read([new("book.yaml", "book: A\n")], [card], Sheets.TestKinds.Catalog, []);
        Assert.Same(card, Assert.Single(book!.CardTexts));
    }
}
