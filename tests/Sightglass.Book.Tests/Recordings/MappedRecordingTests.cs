using CsCheck;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Changes;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;
using Sightglass.Book.Tests.Samples;
using Sightglass.Book.Tests.Sheets;
using Sightglass.Tests.Support;

namespace Sightglass.Book.Tests.Recordings;

/// <summary>What somebody types about a file is read as the book would read it, with each finding at its place.</summary>
public sealed class MappedRecordingTests
{
    private const string Csv = "Time,V [m/s],W\n14:02:00,1.5,10\n14:02:01,2.5,fast\n";

    private static readonly ClassBook s_book = SampleBook.Good("book: A\nplaces: { yard: { x: 1 m, y: 2 m, z: 0 m } }\n");

    [Fact]
    public void Read_NothingSaid_IsNoRecordingAndNoError()
    {
        MappedRecording mapped = Read(new RecordingMapping("r", "r.csv") { Time = "Time", Columns = [new("V [m/s]"), new("W")] });
        Assert.Null(mapped.Recording);
        Assert.Empty(mapped.Found);
    }

    [Theory]
    [InlineData("Time", "W", "sped", "m/s", "", "W", "sets")]
    [InlineData("Time", "W", "speed", "barr", "", "W", "unit")]
    [InlineData("Time", "W", "speed", "psi", "", "W", "unit")]
    [InlineData("Time", "W", "speed", "", "", "W", "column")]
    [InlineData("Time", "W", "speed", "m/s", "near", "W", "within")]
    [InlineData("Time", "W", "speed", "m/s", "", "W", "")]
    [InlineData("When", "V [m/s]", "speed", "", "", null, "time")]
    [InlineData("", "V [m/s]", "speed", "", "", null, "")]
    [InlineData("Time", "gone", "speed", "m/s", "", "gone", "column")]
    [InlineData("W", "V [m/s]", "speed", "", "", null, "")]
    public void Read_SaidWrongly_IsToldAtItsPlace(string time, string head, string sets, string unit, string within, string? at, string key)
    {
        MappedRecording mapped = Read(new RecordingMapping("r", "r.csv") { Time = time, Columns = [new(head) { Sets = [sets], Compares = within.Length > 0 ? "speed" : "", Unit = unit, Within = within }] });
        Assert.Null(mapped.Recording);
        Assert.Contains((at, key), mapped.Found.Select(f => (f.Head, f.Key)));
    }

    /// <summary>The second of two columns that are said: the finding is not put down to the first.</summary>
    [Fact]
    public void Read_SecondColumnWrong_IsToldThere()
    {
        MappedRecording mapped = Read(new RecordingMapping("r", "r.csv") { Time = "Time", Columns = [new("V [m/s]") { Sets = ["speed"] }, new("W") { Sets = ["grade"], Unit = "m/s" }] });
        Assert.Equal([("W", "unit")], mapped.Found.Select(f => (f.Head, f.Key)));
    }

    /// <summary>Heads, texts and remarks come from a stranger's file: whatever they hold, what is written of them is read back letter by letter.</summary>
    [Fact]
    public void Addition_OfAnyTexts_IsReadBack() => Gen.Char["ab:#\\\"'{}[],\t\n%=é -|>&*!@"].Array[1, 10].Select(c => new string(c)).Array[3].Holds(texts =>
    {
        string head = $"x{texts[0].Trim()}x [m/s]";
        string csv = $"Time,\"{head.Replace("\"", "\"\"", StringComparison.Ordinal)}\"\n14:02:00,1.5\n";
        RecordingMapping mapping = new("r", "r.csv") { Text = texts[1], Time = "Time", Missing = [$"x{texts[2].Trim()}x"], Columns = [new(head) { Sets = ["speed"] }] };
        MappedRecording mapped = MappedRecording.Read(mapping, new SourceText("r.csv", csv), s_book, TestKinds.Catalog);
        Assert.True(mapped.Recording is not null, string.Join('\n', mapped.Found));
        Assert.Equal((head, mapping.Missing[0]), (mapped.Recording.Columns[0].Head, mapped.Recording.Missing[0]));
        Assert.Equal(1.5, mapped.Recording.Table!.Columns[0].Numbers[0]);
    });

    [Fact]
    public void Of_Recording_KeepsWhatTheBookSays()
    {
        SourceText source = new("r.csv", "T;V;P (bar);W\n1;12,5;3;1\n2;13,5;4;0\n");
        RecordingLook look = RecordingLook.At(source, [])!;
        RecordingMapping said = new RecordingMapping("r", "r.csv")
        {
            Text = "what it is",
            Time = "T",
            TimeUnit = "min",
            Separator = ';',
            HasDecimalComma = true,
            HeadLine = 1,
            FirstLine = 2,
            Missing = ["--"],
            Columns = [new("V") { Sets = ["speed"], Compares = "speed", Unit = "km/h", Within = "2 km/h" }],
        };
        Recording read = MappedRecording.Read(said, source, s_book, TestKinds.Catalog).Recording!;
        RecordingMapping again = RecordingMapping.Of(look, read);
        Assert.Equal(["V", "P (bar)", "W"], again.Columns.Select(c => c.Head));
        Assert.Equal(TextOf(said), TextOf(again));
        Recording twice = MappedRecording.Read(again, source, s_book, TestKinds.Catalog).Recording!;
        Assert.Equal(read.Table!.Times, twice.Table!.Times);
        Assert.Equal(read.Columns[0].Within!.Value, twice.Columns[0].Within!.Value, 1e-9);
    }

    private static string TextOf(RecordingMapping mapping) => new NewFile("r.yaml", [], [mapping.Addition]).Source.Text;

    private static MappedRecording Read(RecordingMapping mapping) => MappedRecording.Read(mapping, new SourceText("r.csv", Csv), s_book, TestKinds.Catalog);
}
