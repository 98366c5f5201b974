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
