using System.Text;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;
using Sightglass.Web.Recordings;

namespace Sightglass.Web.Tests.Recordings;

/// <summary>From a recorder's file that somebody brings to a drill in the book, and everything that is no recorder's file.</summary>
public sealed class RecordingDeskTests : IDisposable
{
    private const string Csv = "Time,Speed [mph],Throttle,Water out [degF],Brake pipe [psi]\n14:00:00,20,8,200,110\n14:00:05,19,8,201,110\n14:00:10,18,1,202,109\n14:00:15,17,0,---,110\n14:00:20,16,0,203,110\n";

    private readonly CopiedShelf _copy = new();
    private readonly RecordingDesk _desk;

    public RecordingDeskTests() => _desk = new(_copy.Shelf);

    public void Dispose()
    {
        _desk.Dispose();
        _copy.Dispose();
    }

    [Fact]
    public async Task Brought_Mapped_Compared_IsInTheBookWithItsDrill()
    {
        MappingDraft draft = await Brought(Csv);
        Assert.Equal("recordings/a-run.csv", draft.Mapping.File);
        MappedRecording mapped = await _desk.Map(draft, Mapped(draft.Mapping));
        Assert.Empty(mapped.Found);
        RecordingWork work = _desk.Compare(draft, 8, 2);
        await Over(work);
        Assert.Equal(4, work.Report!.Compared.Length); // the row without water is no state
        Assert.Equal(["Water out [degF]", "Brake pipe [psi]"], work.Report.Apart.Select(a => a.Comparison.Column.Head));
        string[] before = _copy.Files();
        MadeFiles made = await _desk.Make(draft, new("hot on a run", "the-engine-runs-hot", "14:00:05", "", "5 s"));
        Assert.True(made.IsIn, made.Says);
        Assert.Equal(["recordings/a-run.yaml", "drills/hot-on-a-run.yaml"], made.Files.Select(f => f.Path));
        Assert.Equal(before.Length + 3, _copy.Files().Length);
        Assert.Empty(before.Except(_copy.Files())); // nothing that was there is another
        Assert.Equal(Csv, File.ReadAllText(_copy.At("recordings/a-run.csv")));
        Assert.Null(_copy.Shelf.Trouble);
        StatesDraw states = _copy.Shelf.Book.Situations["hot on a run, as recorded"].States!;
        Assert.Equal([1, 2, 4], states.Rows);
        Assert.Equal(["the-engine-runs-hot"], _copy.Shelf.Book.Drills["hot on a run"].SolvedBy);
        Assert.Empty(_desk.Brought);
    }

    [Fact]
    public async Task Mapping_AloneInTheBook_IsReadAndNotBroughtTwice()
    {
        MappingDraft draft = await Brought(Csv);
        await _desk.Map(draft, Mapped(draft.Mapping));
        Assert.True((await _desk.Put(draft)).IsIn);
        MadeFiles twice = await _desk.Put(draft);
        Assert.False(twice.IsIn);
        Assert.Contains("already", twice.Says, StringComparison.Ordinal);
        Assert.Equal(5, _copy.Shelf.Book.Recordings["a run"].Table!.Rows);
        Assert.Equal("recordings/a-run-2.csv", (await Brought(Csv)).Mapping.File); // never over a file
    }

    /// <summary>What is said wrongly stands at its column and key; what was typed before stays.</summary>
    [Theory]
    [InlineData("sets", "sped", "", "", "Speed [mph]", "sets")]
    [InlineData("sets", "throttle", "", "", "Speed [mph]", "")]
    [InlineData("compares", "", "no such gauge", "", "Speed [mph]", "compares")]
    [InlineData("compares", "", "water temperature gauge", "", "Speed [mph]", "compares")]
    [InlineData("within", "speed", "speed", "5 parsecs", "Speed [mph]", "within")]
    public async Task Map_SaidWrongly_IsToldAtItsPlace(string what, string sets, string compares, string within, string head, string key)
    {
        MappingDraft draft = await Brought(Csv);
        RecordingMapping mapping = draft.Mapping with { Columns = [.. draft.Mapping.Columns.Select(c => c.Head == head ? c with { Sets = sets.Length > 0 ? [sets] : [], Compares = compares, Within = within } : c)] };
        MappedRecording mapped = await _desk.Map(draft, mapping);
        Assert.Null(mapped.Recording);
        Assert.True(mapped.Found.Any(f => f.Head == head && (key.Length == 0 || f.Key == key)), $"{what}: {string.Join('\n', mapped.Found)}");
        Assert.Same(mapping, _desk.Open(draft.Key).Draft!.Mapping);
        MadeFiles made = await _desk.Make(draft, new("x", "the-engine-runs-hot", "", "", ""));
        Assert.False(made.IsIn);
        Assert.Contains("the mapping has errors", made.Says, StringComparison.Ordinal);
    }

    /// <summary>A field that is no number is told under its column, with its line: formula cells of a spreadsheet among them, which nothing here works out.</summary>
    [Theory]
    [InlineData("=1+1", 10)]
    [InlineData("@SUM(A1)", 10)]
    [InlineData("+cmd|' /C calc'!A0", 10)]
    [InlineData("\"=HYPERLINK(\"\"http://x\"\")\"", 11)]
    public async Task Map_FieldThatIsAFormula_IsNoNumber(string cell, int column)
    {
        MappingDraft draft = await Brought($"Time,Speed [mph]\n14:00:00,20\n14:00:05,{cell}\n");
        MappedRecording mapped = await _desk.Map(draft, draft.Mapping with { Columns = [new("Speed [mph]") { Sets = ["speed"] }] });
        MappingFinding found = Assert.Single(mapped.Found);
        Assert.Equal(("Speed [mph]", 3, column), (found.Head, found.Found.Span.Line, found.Found.Span.Column));
        Assert.Contains("is not a number", found.Found.Message, StringComparison.Ordinal);
    }

    /// <summary>Heads come from a stranger's file: whatever they hold is quoted in what is written, and read back.</summary>
    [Fact]
    public async Task Put_HeadsThatWouldBreakAFile_AreReadBack()
    {
        const string head = "=a: \"b\" # {c}, 'd' [psi] \\n [mph]";
        MappingDraft draft = await Brought($"Time,\"{head.Replace("\"", "\"\"", StringComparison.Ordinal)}\"\n14:00:00,20\n");
        MappedRecording mapped = await _desk.Map(draft, draft.Mapping with { Name = "odd heads", Text = "- a: b\n# c", Columns = [new(head) { Sets = ["speed"] }] });
        Assert.Empty(mapped.Found);
        MadeFiles made = await _desk.Put(draft);
        Assert.True(made.IsIn, made.Says);
        Assert.Equal(head, _copy.Shelf.Book.Recordings["odd heads"].Columns[0].Head);
    }

    [Theory]
    [InlineData("UTF-16", "UTF-16")]
    [InlineData("a spreadsheet", "comma-separated values")]
    [InlineData("Latin-1", "not UTF-8")]
    [InlineData("nothing", "no line of heads")]
    [InlineData("a million columns", "more than 2000 fields")]
    [InlineData("an open quote", "this quote is not closed")]
    [InlineData("one endless line", "a field has more than 10000 characters")]
    public async Task Bring_WhatIsNoRecordersFile_IsRefusedWithTheReason(string what, string says)
    {
        byte[] bytes = what switch
        {
            "UTF-16" => [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(Csv)],
            "a spreadsheet" => [(byte)'P', (byte)'K', 3, 4, 0, 0],
            "Latin-1" => [.. Encoding.Latin1.GetBytes("Zeit;Öl\n1;2\n")],
            "nothing" => [],
            "a million columns" => Encoding.UTF8.GetBytes(string.Join(',', Enumerable.Range(0, 1_000_000)) + "\n1\n"),
            "an open quote" => Encoding.UTF8.GetBytes("Time,V\n1,\"2\n" + new string('x', 20_000)),
            _ => Encoding.UTF8.GetBytes("Time,V\n1," + new string('x', 20_000)),
        };
        string[] before = _copy.Files();
        (MappingDraft? draft, string? wrong) = await _desk.Bring("a run.csv", new MemoryStream(bytes), TestContext.Current.CancellationToken);
        Assert.Null(draft);
        Assert.Contains(says, wrong, StringComparison.Ordinal);
        Assert.Equal(before, _copy.Files());
        Assert.Empty(_desk.Brought);
    }

    /// <summary>100 MB are refused after no more was read than a recording may have.</summary>
    [Fact]
    public async Task Bring_AHundredMegabytes_IsRefusedAndNotReadToItsEnd()
    {
        using Endless file = new(100_000_000);
        (MappingDraft? draft, string? wrong) = await _desk.Bring("large.csv", file, TestContext.Current.CancellationToken);
        Assert.Null(draft);
        Assert.Contains("8 MiB", wrong, StringComparison.Ordinal);
        Assert.InRange(file.Given, RecordingSource.MostBytes, RecordingSource.MostBytes + (128 << 10));
    }

    [Theory]
    [InlineData("../../etc/passwd.csv")]
    [InlineData("/etc/passwd.csv")]
    [InlineData("recordings/none.csv")]
    [InlineData("book.yaml")]
    [InlineData("")]
    public void Open_WhatIsNoFileOfTheBook_IsNone(string file) => Assert.Null(_desk.Open(file).Draft);

    [Fact]
    public async Task Open_FileOfTheFolder_BeginsWithWhatARecordingSaysOfIt()
    {
        const string file = "recordings/stopped-on-the-grade.csv";
        Assert.DoesNotContain(file, _desk.Unread);
        MappingDraft draft = _desk.Open(file).Draft!;
        Assert.Equal("stopped on the grade 2", draft.Mapping.Name);
        MappedRecording mapped = await _desk.Map(draft, draft.Mapping);
        Recording of = _copy.Shelf.Book.Recordings["stopped on the grade"];
        Assert.Empty(mapped.Found);
        Assert.Equal(of.Columns.OrderBy(c => draft.Look.Columns.Select(l => l.Head).ToList().IndexOf(c.Head)).Select(c => (c.Head, string.Join(';', c.Sets), c.Compares?.Text, c.Within)), mapped.Recording!.Columns.Select(c => (c.Head, string.Join(';', c.Sets), c.Compares?.Text, c.Within)));
        Assert.Equal(of.Table!.Rows, mapped.Recording.Table!.Rows);
    }

    [Fact]
    public void Unread_FileThatNothingReads_IsListed_LinksAreNot()
    {
        File.WriteAllText(_copy.At("new run.csv"), Csv);
        File.CreateSymbolicLink(_copy.At("elsewhere.csv"), "/etc/hostname");
        Assert.Equal(["new run.csv"], _desk.Unread);
        Assert.Null(_desk.Open("elsewhere.csv").Draft);
    }

    [Theory]
    [InlineData("", "the-engine-runs-hot", "", "the drill has no title")]
    [InlineData("a: b", "the-engine-runs-hot", "", "cannot be the title of a drill")]
    [InlineData("x", "", "", "no card is chosen")]
    [InlineData("x", "the-engine-runs-hot", "noon", "`from` is `noon`")]
    [InlineData("x", "the-engine-runs-hot", "23:00:00", "no row of")]
    [InlineData("hot as it was recorded", "the-engine-runs-hot", "", "already")]
    public async Task Make_AskedWrongly_SaysWhyAndWritesNothing(string title, string card, string from, string says)
    {
        string[] before = _copy.Files();
        MadeFiles made = await _desk.Make(_copy.Shelf.Book.Recordings["stopped on the grade"], new(title, card, from, "", ""));
        Assert.False(made.IsIn);
        Assert.Contains(says, made.Says, StringComparison.Ordinal);
        Assert.Equal(before, _copy.Files());
    }

    [Fact]
    public async Task Compare_RecordingOfTheBook_IsExplainedByItsSituation()
    {
        Recording recording = _copy.Shelf.Book.Recordings["stopped on the grade"];
        RecordingWork work = _desk.Compare(recording, _desk.DrawingFrom(recording.Name)[0], 24, 2);
        await Over(work);
        Assert.Equal((17, true), (work.Report!.Compared.Length, work.Report.Agrees)); // as many rows as its situation draws from
        Assert.Same(work, _desk.Last(recording.Name));
    }

    /// <summary>Files that were brought and nobody has taken care of are not thrown away for another one.</summary>
    [Fact]
    public async Task Bring_MoreThanAreKept_IsToldAndNothingIsForgotten()
    {
        for (int i = 0; i < 8; i++)
        {
            await Brought(Csv);
        }

        (MappingDraft? ninth, string? wrong) = await _desk.Bring("ninth.csv", new MemoryStream(Encoding.UTF8.GetBytes(Csv)), TestContext.Current.CancellationToken);
        Assert.Null(ninth);
        Assert.Contains("forget one", wrong, StringComparison.Ordinal);
        Assert.Equal(8, _desk.Brought.Count);
        _desk.Forget(_desk.Brought[0]);
        await Brought(Csv);
    }

    /// <summary>The author's file differs in the two lines that were changed and nowhere else, and the pages read it so.</summary>
    [Fact]
    public async Task Change_RecordingOfTheBook_WritesWhatDiffersIntoItsFile()
    {
        string[] before = File.ReadAllLines(_copy.At("recordings.yaml"));
        MappingDraft draft = _desk.Change("stopped on the grade").Draft!;
        await _desk.Map(draft, With(draft.Mapping, "Oil out [degF]", c => c with { Within = "6 K" }) with { Text = "Nothing of it is real." });
        Assert.Same(draft, _desk.Change("stopped on the grade").Draft); // loaded again, with what was typed
        MadeFiles made = await _desk.Put(draft);
        Assert.True(made.IsIn, made.Says);
        string[] after = File.ReadAllLines(_copy.At("recordings.yaml"));
        Assert.Equal(
            ["    text: \"Nothing of it is real.\"", before.Single(l => l.Contains("Oil out", StringComparison.Ordinal)).Replace("5 K", "6 K", StringComparison.Ordinal)],
            after.Where((l, i) => l != before[i]));
        Assert.Equal(before.Length, after.Length);
        Assert.Contains("+    text", made.Changed!.Diff, StringComparison.Ordinal);
        Recording read = _copy.Shelf.Book.Recordings["stopped on the grade"];
        Assert.Equal(("Nothing of it is real.", 6.0), (read.Text, read.Columns.Single(c => c.Head == "Oil out [degF]").Within));
        Assert.Equal("Nothing of it is real.", _desk.Change("stopped on the grade").Draft!.Opened!.Text);
    }

    /// <summary>What would be wrong, what is the same, and what somebody else has changed meanwhile is not written.</summary>
    [Theory]
    [InlineData("wrong", "the mapping has errors")]
    [InlineData("same", "says so already")]
    [InlineData("elsewhere", "changed by somebody else")]
    public async Task Change_WhatCannotBe_SaysWhyAndWritesNothing(string what, string says)
    {
        MappingDraft draft = _desk.Change("stopped on the grade").Draft!;
        await _desk.Map(draft, what == "same" ? draft.Mapping : With(draft.Mapping, "Oil out [degF]", c => c with { Within = what == "wrong" ? "6 parsecs" : "6 K" }));
        if (what == "elsewhere")
        {
            string file = _copy.At("recordings.yaml");
            await File.WriteAllTextAsync(file, (await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken)).Replace("within: 3 psi", "within: 4 psi", StringComparison.Ordinal), TestContext.Current.CancellationToken);
        }

        string[] before = _copy.Files();
        MadeFiles made = await _desk.Put(draft);
        Assert.False(made.IsIn);
        Assert.Contains(says, made.Says, StringComparison.Ordinal);
        Assert.Equal(before, _copy.Files());
    }

    [Fact]
    public void Change_NoSuchRecording_IsNone() => Assert.Equal((null, null), _desk.Change("none"));

    /// <summary>What is typed of a drill is there when the page is loaded again; the one that nobody looked at for longest makes room.</summary>
    [Fact]
    public void DrillOf_ARecording_IsKept()
    {
        DrillDraft draft = _desk.DrillOf("a");
        draft.Ask = draft.Ask with { Title = "hot" };
        for (int i = 0; i < 31; i++)
        {
            _desk.DrillOf($"b{i}");
        }

        Assert.Same(draft, _desk.DrillOf("a"));
        _desk.DrillOf("one more");
        Assert.Equal("hot", _desk.DrillOf("a").Ask.Title);
    }

    private static RecordingMapping With(RecordingMapping mapping, string head, Func<ColumnMapping, ColumnMapping> change) =>
        mapping with { Columns = [.. mapping.Columns.Select(c => c.Head == head ? change(c) : c)] };

    private static RecordingMapping Mapped(RecordingMapping mapping) => mapping with
    {
        Name = "a run",
        Columns =
        [
            new("Speed [mph]") { Sets = ["speed"] },
            new("Throttle") { Sets = ["throttle"], As = [("8", "notch 8"), ("1", "notch 1"), ("0", "idle")] },
            new("Water out [degF]") { Sets = ["temperature of cooling water"], Compares = "water temperature gauge", Within = "4 K" },
            new("Brake pipe [psi]") { Compares = "pressure of brake pipe", Within = "3 psi" },
        ],
    };

    private static async Task Over(RecordingWork work)
    {
        while (!work.IsOver)
        {
            await Task.Delay(20, TestContext.Current.CancellationToken);
        }

        Assert.Empty(work.Wrong);
    }

    private async Task<MappingDraft> Brought(string csv)
    {
        (MappingDraft? draft, string? wrong) = await _desk.Bring("C:\\logs\\a run.csv", new MemoryStream(Encoding.UTF8.GetBytes(csv)), TestContext.Current.CancellationToken);
        return draft ?? throw new InvalidOperationException(wrong);
    }
}
