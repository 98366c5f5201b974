using System.Diagnostics;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Hostile;
using Sightglass.Book.Tests.Samples;
using Sightglass.Book.Tests.Sheets;

namespace Sightglass.Book.Tests.Recordings;

/// <summary>Recordings with their files; every mistake is told where it is.</summary>
public sealed class RecordingReaderTests : IDisposable
{
    private const string Mapping = """

        recordings:
          grade:
            file: recordings/grade.csv
            time: Time
            missing: "---"
            columns:
              - { column: "Speed [mph]", sets: speed, within: 2 mph }
              - { column: Throttle, sets: throttle, as: { 0: idle, 1: notch 1 } }
              - { column: "Outside [degF]", sets: ambient temperature, within: 5 degF }

        """;

    private const string States = "  recorded: { states: { recording: grade, from: \"14:02:00\", to: \"14:02:20\", every: 10 s } }\n";

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Read_GoodOne_HasRowsInSi()
    {
        Recording read = Good("Time,Speed [mph],Throttle,Outside [degF],Remark\r\n14:02:00,10,0,50,\"a, \"\"b\"\"\"\r\n\r\n14:02:05,20,1.0,---,=1+1\r\n14:02:10,30,1,68,\r\n").Recordings["grade"];
        Assert.Equal((3, true), (read.Table!.Rows, read.Table.IsClock));
        Assert.Equal(["14:02:00", "14:02:05", "14:02:10"], read.Table.Labels);
        Assert.Equal([50_520, 50_525, 50_530], read.Table.Times);
        Assert.Equal(30 * 0.44704, read.Table.Columns[0].Numbers[2], 1e-12);
        Assert.Equal(["idle", "notch 1", "notch 1"], Enumerable.Range(0, 3).Select(read.Table.Columns[1].WordOf));
        Assert.Equal(283.15, read.Table.Columns[2].Numbers[0], 1e-9);
        Assert.False(read.Table.Columns[2].Has(1));
        Assert.Equal(5 / 1.8, read.Columns[2].Within!.Value, 1e-12); // a difference, whatever zero the scale has
        Assert.Equal("recordings/grade.csv:5:10", read.Table.Columns[0].SpanOf(2).ToString());
    }

    [Fact]
    public void Read_States_AreTheWholeRowsOfTheStretch()
    {
        Situation situation = Good("Time,Speed [mph],Throttle,Outside [degF]\n14:01:59,1,0,50\n14:02:00,2,0,50\n14:02:05,3,0,50\n14:02:10,4,0,\n14:02:11,5,0,50\n14:02:20,6,0,50\n14:02:21,7,0,50\n", States).Situations["recorded"];
        Assert.Equal([1, 4], situation.States!.Rows);
    }

    [Fact]
    public void Read_OneDateInAllRows_IsLeftOutOfTheirNames()
    {
        Recording read = Good("Time,V [m/s]\n11/02/2031 2:59:50 PM,1\n11/02/2031 3:00:10 PM,2\n", "", Mapped("time: Time, columns: [{ column: \"V [m/s]\", sets: speed }]")).Recordings["grade"];
        Assert.Equal(["2:59:50 PM", "3:00:10 PM"], read.Table!.Labels);
    }

    [Fact]
    public void Read_SemicolonsAndDecimalCommas_AreUnderstood()
    {
        Recording read = Good("Uhr;V\n0,5;12,5\n1;1e1\n", "", Mapped("time: Uhr, decimal: comma, columns: [{ column: V, sets: speed, unit: m/s }]")).Recordings["grade"];
        Assert.Equal([12.5, 10], read.Table!.Columns[0].Numbers);
        Assert.Equal([0.5, 1], read.Table.Times);
        Assert.Equal(["0.5 s", "1 s"], read.Table.Labels);
    }

    [Fact]
    public void Read_HeadsAndRowsFurtherDown_AreFound()
    {
        Recording read = Good("Export of something\n\nT\tV\ns\tm/s\n1\t5\n", "", Mapped("time: T, heads in line: 3, rows from line: 5, columns: [{ column: V, sets: speed, unit: m/s }]")).Recordings["grade"];
        Assert.Equal([5], read.Table!.Columns[0].Numbers);
    }

    [Fact]
    public void Read_ClockPastMidnight_GoesOn()
    {
        ClassBook book = Good("Time,V [m/s]\n2031-02-11 11:59:50 PM,1\n2031-02-12 12:00:10 AM,2\n", "  recorded: { states: { recording: grade, from: \"0:00:00\" } }\n", Mapped("time: Time, columns: [{ column: \"V [m/s]\", sets: speed }]"));
        Assert.Equal([86_390, 86_410], book.Recordings["grade"].Table!.Times);
        Assert.Equal("2031-02-11 11:59:50 PM", book.Recordings["grade"].Table!.Labels[0]);
        Assert.Equal([1], book.Situations["recorded"].States!.Rows);
    }

    [Theory]
    [InlineData("", "recordings/grade.csv:1:1: B110")]
    [InlineData("\n \n,,\n", "recordings/grade.csv:1:1: B110")]
    [InlineData("Time,Speed [mph],Throttle,Outside [degF]\n", "recordings/grade.csv:2:1: B110")]
    [InlineData("Time,Speed,Throttle,Outside [degF]\n14:02:00,1,0,50\n", "B111: `recordings/grade.csv` has no column `Speed [mph]`; it has: `Time`, `Speed`, `Throttle`, `Outside [degF]`")]
    [InlineData("Time,Speed [mph],Speed [mph],Throttle,Outside [degF]\n", "recordings/grade.csv:1:18: B111")]
    [InlineData("Time,Speed [mph],Throttle,Outside [degF]\n14:02:00,fast,0,50\n", "recordings/grade.csv:2:10: B112: `fast` of the column `Speed [mph]` is not a number")]
    [InlineData("Time,Speed [mph],Throttle,Outside [degF]\n14:02:00,\"1,5\",0,50\n", "say `decimal: comma`")]
    [InlineData("Time,Speed [mph],Throttle,Outside [degF]\n14:02:00,1,5,0,50\n", "recordings/grade.csv:2:16: B112: the row has 5 fields, the head line 4; put numbers with a decimal comma in quotes")]
    [InlineData("Time,Speed [mph],Throttle,Outside [degF]\n14:02:00,NaN,0,50\n", "recordings/grade.csv:2:10: B112")]
    [InlineData("Time,Speed [mph],Throttle,Outside [degF]\n14:02:00,1e400,0,50\n", "recordings/grade.csv:2:10: B112")]
    [InlineData("Time,Speed [mph],Throttle,Outside [degF]\n14:02:00,=cmd|'/c calc'!A1,0,50\n", "recordings/grade.csv:2:10: B112: `=cmd|'/c calc'!A1` of the column")]
    [InlineData("Time,Speed [mph],Throttle,Outside [degF]\n14:02:00,1,7,50\n", "recordings/grade.csv:2:12: B112: `7` of the column `Throttle` is no position")]
    [InlineData("Time,Speed [mph],Throttle,Outside [degF]\n14:62:00,1,0,50\n", "recordings/grade.csv:2:1: B112: `14:62:00` of the column `Time` is not a time")]
    [InlineData("Time,Speed [mph],Throttle,Outside [degF]\n14:02:00,1,0,50\n12,1,0,50\n", "recordings/grade.csv:3:1: B112: `12` of the column `Time` is not a time")]
    [InlineData("Time,Speed [mph],Throttle,Outside [degF]\n14:02:00,1,0,50\n14:01:59,1,0,50\n", "recordings/grade.csv:3:1: B113: `14:01:59` is earlier than `14:02:00`")]
    [InlineData("Time,Speed [mph],Throttle,Outside [degF]\n14:02:00,\"1,0,50\n", "recordings/grade.csv:2:10: B112: this quote is not closed")]
    [InlineData("Time,Speed [mph],Throttle,Outside [degF]\n14:02:00,\"1\"1,0,50\n", "recordings/grade.csv:2:13: B112: text stands between")]
    [InlineData("Time,Speed [mph],Throttle,Outside [degF]\n15:02:00,1,0,50\n", "B114: no row of `grade` can be drawn: it goes from 15:02:00 to 15:02:00")]
    [InlineData("Time,Speed [mph],Throttle,Outside [degF]\n14:02:00,,0,50\n", "B114: no row of `grade` can be drawn: each row of the stretch lacks a value")]
    [InlineData("PK\u0003\u0004", "recordings/grade.csv:1:1: B110")]
    public void Read_FileThatIsWrong_IsToldWhereAndWhatWouldBeRight(string csv, string says) => Assert.Contains(says, Wrong(csv, States), StringComparison.Ordinal);

    [Theory]
    [InlineData("file: ../grade.csv, time: Time, columns: []", "B057")]
    [InlineData("file: /etc/passwd.csv, time: Time, columns: []", "B057")]
    [InlineData("file: recordings/grade.txt, time: Time, columns: []", "B110: `recordings/grade.txt` is not a file of comma-separated values")]
    [InlineData("file: recordings/none.csv, time: Time, columns: []", "B110: there is no file")]
    [InlineData("file: recordings/grade.csv, time: Time, columns: [{ column: V }]", "B031: the column `V` lacks `sets`")]
    [InlineData("file: recordings/grade.csv, time: Time, columns: [{ column: V, sets: sped, unit: mph }]", "B070")]
    [InlineData("file: recordings/grade.csv, time: Time, columns: [{ column: V, sets: speed, unit: barr }]", "B042: unknown unit `barr`")]
    [InlineData("file: recordings/grade.csv, time: Time, columns: [{ column: V, sets: speed, unit: psi }]", "B115: `psi` is not a unit of `speed`; write one of `m/s`")]
    [InlineData("file: recordings/grade.csv, time: Time, columns: [{ column: V, sets: speed }]", "B115: nothing says in which unit `V` is")]
    [InlineData("file: recordings/grade.csv, time: Time, columns: [{ column: \"V [mph]\", sets: speed, unit: km/h }]", "B115: the head `V [mph]` says `mph`, not `km/h`")]
    [InlineData("file: recordings/grade.csv, time: Time, columns: [{ column: T, sets: throttle, unit: mph }]", "B115: `throttle` has positions and no unit")]
    [InlineData("file: recordings/grade.csv, time: Time, columns: [{ column: T, sets: throttle, as: { 1: notch 99 } }]", "B052: `throttle` has no position `notch 99`")]
    [InlineData("file: recordings/grade.csv, time: Time, columns: [{ column: V, sets: speed, unit: mph }, { column: W, sets: speed, unit: mph }]", "B116: `speed` is set here and at")]
    [InlineData("file: recordings/grade.csv, time: Time, time unit: psi, columns: []", "B115: `psi` is not a unit of `time unit`")]
    public void Read_MappingThatIsWrong_IsToldWhereAndWhatWouldBeRight(string mapping, string says)
    {
        string text = Wrong("Time,V,\"V [mph]\",W,T\n14:02:00,1,1,1,1\n", "", $"\nrecordings:\n  grade: {{ {mapping} }}\n");
        Assert.Contains("book.yaml:", text, StringComparison.Ordinal);
        Assert.Contains(says, text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("from: 90 s", "B114: `from` is `90 s`; the recording tells the time by a clock")]
    [InlineData("to: never", "B114: `to` is `never`")]
    [InlineData("every: -1 s", "B039")]
    [InlineData("until: 3", "B030")]
    public void Read_StretchThatIsWrong_IsTold(string stretch, string says) =>
        Assert.Contains(says, Wrong("Time,Speed [mph],Throttle,Outside [degF]\n14:02:00,1,0,50\n", $"  recorded: {{ states: {{ recording: grade, {stretch} }} }}\n"), StringComparison.Ordinal);

    [Fact]
    public void Read_HundredMegabytes_IsB110WithoutBeingRead()
    {
        string path = _folder.Write("recordings/grade.csv", "");
        using (FileStream big = File.OpenWrite(path))
        {
            big.SetLength(100L << 20);
        }

        string text = Wrong(null, "");
        Assert.Contains("B110: the recording is larger than 8 MiB", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_LinksOnTheWay_AreNotFollowed()
    {
        _folder.Write("elsewhere/grade.csv", "Time\n");
        Directory.CreateSymbolicLink(Path.Combine(_folder.Path, "recordings"), Path.Combine(_folder.Path, "elsewhere"));
        Assert.Contains("B110: there is no file", Wrong(null, ""), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_Pipe_IsAnEmptyFileAndDoesNotHang()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "pipes are made with mkfifo");
        Directory.CreateDirectory(Path.Combine(_folder.Path, "recordings"));
        using Process make = Process.Start("mkfifo", Path.Combine(_folder.Path, "recordings", "grade.csv"));
        make.WaitForExit();
        Assert.Contains("recordings/grade.csv:1:1: B110", Wrong(null, ""), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(new byte[] { 0x54, 0x69, 0x0A, 0xB0, 0x46 }, "recordings/grade.csv:2:1: B004")]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x54, 0x00 }, "recordings/grade.csv:1:1: B004: the file is written in UTF-16")]
    public void Read_BytesThatAreNotUtf8_AreB004AtTheByte(byte[] bytes, string says)
    {
        File.WriteAllBytes(_folder.Write("recordings/grade.csv", ""), bytes);
        Assert.Contains(says, Wrong(null, ""), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_ManyWrongFields_AreCutOff()
    {
        string rows = string.Concat(Enumerable.Range(0, 5_000).Select(_ => "14:02:00,x,0,50\n"));
        DiagnosticList found = Read("Time,Speed [mph],Throttle,Outside [degF]\n" + rows, "", Mapping).Found;
        Assert.Equal(21, found.Count);
        Assert.Contains("more than 20 fields", found.Last().Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_FromTextsAlone_TakesTheMappingWithoutRows()
    {
        ClassBook book = SampleBook.Good(Whole(States, Mapping));
        Assert.Null(book.Recordings["grade"].Table);
        Assert.Empty(book.Situations["recorded"].States!.Rows);
    }

    [Fact]
    public void Hash_OfTheBook_KnowsTheRecording()
    {
        Good("Time,Speed [mph],Throttle,Outside [degF]\n14:02:00,1,0,50\n");
        string before = BookHash.Of(_folder.Path);
        _folder.Write("recordings/grade.csv", "Time,Speed [mph],Throttle,Outside [degF]\n14:02:00,2,0,50\n");
        Assert.NotEqual(before, BookHash.Of(_folder.Path));
    }

    private static string Whole(string situation, string mapping) => SampleBook.Text.Replace("routes:\n", $"{situation}routes:\n", StringComparison.Ordinal) + mapping;

    private static string Mapped(string rest) => $"\nrecordings:\n  grade: {{ file: recordings/grade.csv, {rest} }}\n";

    private ClassBook Good(string csv, string situation = "", string mapping = Mapping)
    {
        (ClassBook? book, DiagnosticList found) = Read(csv, situation, mapping);
        Assert.True(book is not null, string.Join('\n', found));
        return book;
    }

    private string Wrong(string? csv, string situation, string mapping = Mapping)
    {
        (ClassBook? book, DiagnosticList found) = Read(csv, situation, mapping);
        Assert.Null(book);
        return string.Join('\n', found);
    }

    private (ClassBook? Book, DiagnosticList Found) Read(string? csv, string situation, string mapping)
    {
        _folder.Write("book.yaml", Whole(situation, mapping));
        _folder.Write("photos/forward.jpg", "");
        if (csv is not null)
        {
            _folder.Write("recordings/grade.csv", csv);
        }

        DiagnosticList found = [];
        ClassBook? book = BookReader.Read(_folder.Path, TestKinds.Catalog, found);
        return (book, found);
    }
}
