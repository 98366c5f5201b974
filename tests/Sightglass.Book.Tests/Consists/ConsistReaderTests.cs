using System.Text;
using CsCheck;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Consists;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Committed;
using Sightglass.Plant.Kinds;

namespace Sightglass.Book.Tests.Consists;

/// <summary>The file of a train that somebody types: what it says, and every mistake with its place and what would be right.</summary>
public class ConsistReaderTests
{
    private const string Signs = "{}[]:,-#&*!|>'\"%@`\n \t?0a~.\\<=é\u2028\0\uD800";

    private static readonly Lazy<ClassBook> s_curlew = new(() => BookReader.Read(RepositoryFile.PathOf("books/curlew"), KindLibrary.Catalog, [])!);

    private static readonly string s_example = File.ReadAllText(RepositoryFile.PathOf("docs/guide/a-train.yaml"));

    /// <summary>Where in the text (a share of its length), how many characters to take out, what to put in.</summary>
    private static readonly Gen<(double At, int Out, string In)> s_edit =
        Gen.Select(Gen.Double[0, 1], Gen.Int[0, 20], Gen.Char[Signs].Array[0, 3].Select(c => new string(c)), (at, take, put) => (at, take, put));

    [Fact]
    public void Read_TheExampleOfTheGuide_GivesItsVehicles()
    {
        Consist consist = Good(s_example);
        Assert.Equal("Night mail, Tuesday", consist.Title);
        Assert.Equal((0.016, 4, 0.18), (consist.Grade, consist.Curve, consist.Adhesion));
        Assert.Equal(["this machine", "another machine", "baggage car", "coach", "coach", "coach", "coach"], consist.Vehicles.Select(v => v.Listed.Class));
        Assert.Equal([false, true, false, false, false, false, true], consist.Vehicles.Select(v => v.Listed.IsTurned));
        Assert.Equal("4104", consist.Vehicles[1].Listed.RoadNumber);
        Assert.Equal(52_000, consist.Vehicles[2].Mass);
        Assert.Equal("head-end left", Assert.Single(consist.Vehicles[3].NotCoupled).Line);
        Assert.Equal(("A truck cutout cock", "closed"), (consist.Vehicles[6].Stands[0].Item, consist.Vehicles[6].Stands[0].Position));
    }

    [Theory]
    [InlineData("machine in front of a dead one", "[{ vehicle: machine, dead: yes }, machine, coach]", 1)]
    [InlineData("the first machine", "[coach, machine, machine]", 1)]
    [InlineData("the machine that is said", "[machine, this machine, coach]", 1)]
    public void Read_SeveralMachines_TakesOneForThatOfTheBook(string why, string vehicles, int own) => Assert.True(Good($"vehicles: {vehicles}").Vehicles[own].Listed.IsThisMachine, why);

    [Theory]
    [InlineData("", "must be one map of keys, not nothing")]
    [InlineData("- coach", "must be a map of keys, not a list")]
    [InlineData("consist: A", "1:1: B031: the file of a train lacks `vehicles`; add `vehicles: [ machine, CAR ]`")]
    [InlineData("vehicles: []", "must be a list of vehicles from the head of the train, not an empty one")]
    [InlineData("vehicles: [coach]", "the train has no machine; name one among its `vehicles`: `machine`")]
    [InlineData("vehicles: [this machine, this machine]", "1:26: B102: `this machine` stands here a second time; write `machine` for another of the class")]
    [InlineData("vehicles: [machine, coahc]", "1:21: B100: there is no car `coahc`; did you mean `coach`?")]
    [InlineData("vehicles: [machine, { vehicle: coach, cuont: 3 }]", "unknown key `cuont` in the vehicle; did you mean `count`?")]
    [InlineData("vehicles: [machine, { vehicle: coach, count: 0 }]", "`count` is `0`; it must be a whole number, 1 or more")]
    [InlineData("vehicles: [machine, { vehicle: coach, count: 2147483647 }]", "with this the train has more than 250 vehicles; make it shorter")]
    [InlineData("vehicles: [{ vehicle: machine, number: \"4103\" }]", "there is no road number `4103`; did you mean `4101`?")]
    [InlineData("vehicles: [machine, { vehicle: coach, dead: yes }]", "`dead` is `yes`; it must be left away: `coach` is no machine")]
    [InlineData("vehicles: [machine, { vehicle: coach, count: 2, number: \"7\" }]", "it must be of one vehicle alone: list each by itself")]
    [InlineData("vehicles: [machine, { vehicle: coach, mass: 54 psi }]", "Q0")]
    [InlineData("vehicles: [machine, { vehicle: coach, mass: -5 t }]", "`mass` is `-5 t`; it must be more than zero")]
    [InlineData("vehicles: [machine, { vehicle: coach, stands: { A truck cutout cok: closed } }]", "there is no item `A truck cutout cok`; did you mean `A truck cutout cock`?")]
    [InlineData("vehicles: [machine, { vehicle: coach, stands: { A truck cutout cock: shut } }]", "`A truck cutout cock` has no position `shut`; it has: `closed`, `open`")]
    [InlineData("vehicles: [machine, { vehicle: coach, not coupled behind: [head-end middle] }]", "`head-end middle` is not possible for `not coupled behind`: what its ends join")]
    [InlineData("grade: 16 %\nvehicles: [machine]", "1:8: B039: `grade` is `16 %`; it must be 0 % to 10 %, up the steepest grade")]
    [InlineData("adhesion: 0\nvehicles: [machine]", "`adhesion` is `0`; it must be 1 % to 50 %")]
    [InlineData("vehicles: [machine]\n---\nvehicles: [machine]", "must be one map of keys, not several documents")]
    [InlineData("vehicles: [machine", "B011")]
    public void Read_AMistake_SaysWhereAndWhatIsRight(string text, string says)
    {
        DiagnosticList found = [];
        Assert.Null(Read(text, found));
        Assert.Contains(found, d => d.ToString().Contains(says, StringComparison.Ordinal));
    }

    [Fact]
    public void Text_OfATrain_IsReadBackTheSame()
    {
        Consist consist = Good(s_example);
        Consist back = Good(ConsistText.Of(consist));
        Assert.Equal(ConsistText.Of(consist), ConsistText.Of(back));
        Assert.Equal((consist.Title, consist.Grade, consist.Curve, consist.Adhesion), (back.Title, back.Grade, back.Curve, back.Adhesion));
        Assert.Equal(consist.Vehicles.Select(Told), back.Vehicles.Select(Told));
    }

    [Fact]
    public void Read_AnyEdits_GivesATrainOrErrorsWithPlacesInTheText() => s_edit.Array[1, 8].Holds(
        edits =>
        {
            StringBuilder text = new(s_example);
            foreach ((double at, int take, string put) in edits)
            {
                int start = (int)(at * text.Length);
                text.Remove(start, Math.Min(take, text.Length - start)).Insert(start, put);
            }

            DiagnosticList found = [];
            Consist? consist = Read(text.ToString(), found);
            return consist is not null == !found.HasErrors && found.All(d => d.Span.Start >= 0 && d.Span.End <= text.Length && d.ToString().Length > 0)
                && (consist is null || consist.Vehicles.Count(v => v.Listed.IsThisMachine) == 1);
        },
        iter: 300);

    private static string Told(ConsistVehicle v) =>
        string.Join('|', v.Listed.Class, v.Listed.IsTurned, v.Listed.RoadNumber, v.Number, v.Mass, v.IsDead, string.Join(';', v.Stands.Select(s => $"{s.Item}={s.Position}")), string.Join(';', v.NotCoupled.Select(n => n.Line)));

    private static Consist? Read(string text, DiagnosticList found) => ConsistReader.Read(new SourceText("train.yaml", text), s_curlew.Value, found);

    private static Consist Good(string text)
    {
        DiagnosticList found = [];
        Consist? consist = Read(text, found);
        Assert.True(consist is not null, string.Join('\n', found));
        return consist;
    }
}
