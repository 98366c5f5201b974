using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Samples;

namespace Sightglass.Book.Tests;

/// <summary>Bets, habits and pictures as they stand in a book; every mistake is told where it is.</summary>
public sealed class ClassroomReaderTests
{
    private const string Bets = """

        bets:
          hole:
            asks: What is left?
            situation: a hole
            runs for: 2 h
            acts: [{ after: 90 s, set: grade, to: -1 % }, { set: forward supply valve, to: closed }]
            shows: [volume of forward compartment, { is: level of forward compartment, as: level }]
            answers: [{ says: Much., when: fill of forward compartment > 50 % }, { says: Little. }]
        searches:
          it is dry: { wanted: fuel is left, situation: leaking compartment, within: 90 s, text: Nothing comes. }
        habits:
          one tank:
            lines: [{ item: forward supply valve, was: one, here: two, hurts: half a job }]
        pictures:
          panel:
            file: photos/panel.jpg
            shows: Two handles.
            place: "fuel panel, right"
            marks: [{ item: forward supply valve, x: 40 %, y: 55 %, width: 10 %, height: 20 % }]

        """;

    [Fact]
    public void Read_GoodOnes_TakesAllOfThem()
    {
        ClassBook book = SampleBook.Good(SampleBook.Text + Bets);
        Bet bet = book.Bets["hole"];
        Assert.Equal(("What is left?", "a hole", 7200.0), (bet.Asks, bet.Situation, bet.RunsFor));
        Assert.Equal([(0.0, "forward supply valve", "closed", 0.0), (90.0, "grade", "-1 %", -0.01)], bet.Acts.Select(a => (a.After, a.Name, a.To, a.Value)));
        Assert.Equal([("volume of forward compartment", "volume of forward compartment"), ("level of forward compartment", "level")], bet.Shows.Select(s => (s.Formula, s.Name)));
        Assert.Equal([("Much.", "fill of forward compartment > 50 %"), ("Little.", null)], bet.Answers.Select(a => (a.Says, a.When)));
        Search search = book.Searches["it is dry"];
        Assert.Equal(("fuel is left", "leaking compartment", 90.0, "Nothing comes."), (search.Wanted, search.Situation, search.Within, search.Text));
        Picture picture = book.Pictures["panel"];
        Assert.Equal(("photos/panel.jpg", "Two handles.", "fuel panel, right"), (picture.File, picture.Shows, picture.Place));
        Assert.Equal(new PictureMark("forward supply valve", 0.4, 0.55, 0.1, 0.2), picture.Marks.Single());
        Assert.Equal([picture], book.PicturesOf(book.Items["forward supply valve"]));
        Assert.Equal([picture], book.PicturesAt("fuel panel, right"));
        Assert.Empty(book.PicturesOf(book.Items["aft compartment"]));
        Assert.Equal(new HabitLine("forward supply valve", "one", "two", "half a job"), book.Habits["one tank"].Lines.Single());
    }

    private const string Drills = """

        drills:
          holed:
            level: first day
            use: qualifying
            aim: Keep what is left.
            situation: leaking compartment
            role: mechanical
            time limit: 30 min
            not real: [nothing burns]
            with cards: no
            cue: { is: fuel is left, known from: [a sign] }
            events:
              - { after: 2 min, fault: leak, on: aft compartment, values: { diameter: 8 mm } }
              - { at: "fuel panel, right", without: leak, on: aft compartment }
              - { operated: forward supply valve, set: grade, to: 1 % }
              - { when: fuel is left, says: Now., by: mechanical }
            objectives:
              it is shut: { is: closed of forward supply valve, within: 10 min, stays: 5 min, worth: 3, critical: no, once: yes, or reported: [it is holed], because: Fuel. }
            reports:
              it is holed: { is: fault leak of aft compartment, told as: [it leaks], because: The glass. }
            must never:
              it is dry: not fuel is left
              it is wet: { is: fuel is left, because: Wet. }
            order:
              looked first: { first: fuel is left, then: closed of forward supply valve, because: Look. }
            hints: [{ says: Look., costs: 2 }]
            observe: [keeps both hands free on the steps, "repeats what is said by radio, word for word"]
            asks: [{ question: Why?, answer: So. }]
            passes from: 75 %

        """;

    [Fact]
    public void Read_ADrill_TakesAllOfIt()
    {
        Drill drill = SampleBook.Good(SampleBook.Text + Drills).Drills["holed"];
        Assert.Equal((DrillLevel.FirstDay, true, "Keep what is left.", "leaking compartment", "mechanical", 1800.0, false, 0.75), (drill.Level, drill.IsQualifying, drill.Aim, drill.Situation, drill.Role, drill.TimeLimit, drill.WithCards, drill.PassesFrom));
        Assert.Equal(("fuel is left", "a sign", "nothing burns"), (drill.Cue!.Text, drill.KnownFrom.Single(), drill.NotReal.Single()));
        DrillObjective objective = drill.Objectives.Single();
        Assert.Equal(("it is shut", 600.0, 300.0, 3.0, false, true, "it is holed"), (objective.Name, objective.Within, objective.Stays, objective.Worth, objective.IsCritical, objective.Once, objective.OrReported.Single()));
        Assert.Equal(("it is holed", "it leaks", "The glass."), (drill.Reports.Single().Name, drill.Reports.Single().ToldAs.Single(), drill.Reports.Single().Because));
        Assert.Equal([("it is dry", ""), ("it is wet", "Wet.")], drill.MustNever.Select(n => (n.Name, n.Because)));
        Assert.Equal(("looked first", "Look."), (drill.Orders.Single().Name, drill.Orders.Single().Because));
        Assert.Equal(["keeps both hands free on the steps", "repeats what is said by radio, word for word"], drill.Observe);
        Assert.Equal(("Look.", 2.0), (drill.Hints.Single().Says, drill.Hints.Single().Costs));
        Assert.Equal(new[] { (120.0, "leak", false), (0.0, "leak", true), (0.0, null, false), (0.0, null, false) }, drill.Events.Select(e => (e.After, e.Fault, e.TakesOut)));
        Assert.Equal(("diameter", "8 mm"), (drill.Events[0].Values.Single().Name, drill.Events[0].Values.Single().Value.Text));
        Assert.Equal(("fuel panel, right", "forward supply valve", 0.01, "Now."), (drill.Events[1].At, drill.Events[2].Operated, drill.Events[2].ToValue, drill.Events[3].Says));
    }

    [Theory]
    [InlineData("aim: Keep what is left.", "aims: Keep.", "did you mean `aim`")]
    [InlineData("level: first day", "level: second day", "`working`, `first day`, `qualifying`")]
    [InlineData("use: qualifying", "use: fun", "`practice`, `qualifying`")]
    [InlineData("role: mechanical", "role: mechanicl", "did you mean `mechanical`")]
    [InlineData("time limit: 30 min", "time limit: 0 s", "more than zero")]
    [InlineData("within: 10 min", "within: 40 min", "no more than the drill's time limit")]
    [InlineData("or reported: [it is holed]", "or reported: [it is hold]", "it is holed")]
    [InlineData("{ is: closed of forward supply valve, within", "{ was: closed of forward supply valve, within", "is")]
    [InlineData("{ at: \"fuel panel, right\", without: leak, on: aft compartment }", "{ at: \"fuel panel, right\" }", "one of `set`")]
    [InlineData("operated: forward supply valve, set: grade", "set: grade, says: x", "2 of them")]
    [InlineData("says: Now., by: mechanical", "says: Now.", "by")]
    [InlineData("first: fuel is left, then", "frist: fuel is left, then", "first")]
    [InlineData("says: Look., costs: 2", "say: Look.", "says")]
    [InlineData("costs: 2", "costs: -2", "0 or more")]
    [InlineData("passes from: 75 %", "passes from: 170 %", "0 % to 100 %")]
    [InlineData("cue: { is: fuel is left, known from: [a sign] }", "cue: soon", "a map")]
    [InlineData("objectives:", "objective:", "objectives")]
    public void Read_AMistakeInADrill_IsToldWhereItIs(string right, string wrong, string says)
    {
        Assert.Contains(right, Drills, StringComparison.Ordinal);
        DiagnosticList found = SampleBook.Read(SampleBook.Text + Drills.Replace(right, wrong, StringComparison.Ordinal)).Found;
        Assert.Contains(found, d => d.Severity == Severity.Error && d.ToString().Contains(says, StringComparison.Ordinal) && d.Span.Source is not null);
    }

    [Theory]
    [InlineData("asks: What is left?", "ask: What is left?", "asks")]
    [InlineData("runs for: 2 h", "runs for: 0 s", "more than zero")]
    [InlineData("runs for: 2 h", "runs for: 2 psi", "psi")]
    [InlineData("after: 90 s", "after: 3 h", "less than the bet runs for")]
    [InlineData("set: grade, to: -1 %", "set: grade, to: 5 psi", "psi")]
    [InlineData(", { says: Little. }]", "]", "2 to 6 answers")]
    [InlineData("shows: [volume of forward compartment,", "shows: [a, b, c, d,", "at most 4 lines")]
    [InlineData("acts: [{ after: 90 s, set: grade, to: -1 % }, { set: forward supply valve, to: closed }]", "acts: soon", "a list")]
    [InlineData("wanted: fuel is left, ", "", "wanted")]
    [InlineData("within: 90 s", "within: 0 s", "more than zero")]
    [InlineData("situation: leaking compartment, within", "situation: leaking compartments, within", "did you mean `leaking compartment`")]
    [InlineData("item: forward supply valve", "item: forward suply valve", "forward supply valve")]
    [InlineData("file: photos/panel.jpg", "file: ../panel.jpg", "does not lie in the book's folder")]
    [InlineData("file: photos/panel.jpg", "file: photos/panel.tiff", "a picture that browsers show")]
    [InlineData("shows: Two handles.", "show: Two handles.", "shows")]
    [InlineData("width: 10 %", "width: 70 %", "within the picture")]
    [InlineData("height: 20 %", "height: 0 %", "larger than nothing")]
    [InlineData("x: 40 %", "x: 140 %", "0 % to 100 %")]
    [InlineData("place: \"fuel panel, right\"", "place: nowhere", "there is no place")]
    [InlineData("hurts:", "hurt:", "hurts")]
    [InlineData("lines: [{ item: forward supply valve, was: one, here: two, hurts: half a job }]", "lines: { }", "a list")]
    public void Read_AMistake_IsToldWhereItIs(string right, string wrong, string says)
    {
        Assert.Contains(right, Bets, StringComparison.Ordinal);
        DiagnosticList found = SampleBook.Read(SampleBook.Text + Bets.Replace(right, wrong, StringComparison.Ordinal)).Found;
        Assert.Contains(found, d => d.Severity == Severity.Error && d.ToString().Contains(says, StringComparison.Ordinal) && d.Span.Source is not null);
    }
}
