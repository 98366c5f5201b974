using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book;
using Sightglass.Web.Live;
using Sightglass.World;
using Sightglass.World.Records;

namespace Sightglass.Cli.Tests;

/// <summary><c>run --record</c>: a session of the pages done again.</summary>
public sealed class RecordedRunTests
{
    [Fact]
    public async Task Run_ARecord_EndsInTheSameHash()
    {
        using ScratchFolder scratch = new();
        string file = Write(scratch, tail: "");
        Call call = await Call.Of("run", "--record", file, "--show", "aft supply valve", "--every", "30 s");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("with the same hash", call.Output, StringComparison.Ordinal);
        Assert.Contains("aft supply valve", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_ARecordWithAnotherHash_SaysNo()
    {
        using ScratchFolder scratch = new();
        Call call = await Call.Of("run", "--record", Write(scratch, tail: "0123456789abcdef"), "--every", "60 s");
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains("another hash, 0123456789abcdef", call.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no file `", "--record", "no-such.jsonl")]
    [InlineData("not the record of a session", "--record", "README.md")]
    [InlineData("leave out --case", "--record", "README.md", "--case", "3")]
    [InlineData("leave out SITUATION", "idle, nothing wrong", "--record", "README.md")]
    public async Task Run_WithoutAProperRecord_SaysWhatIsWrong(string says, params string[] arguments)
    {
        Call call = await Call.Of(["run", .. arguments]);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(says, call.Error, StringComparison.Ordinal);
    }

    private static string Write(ScratchFolder scratch, string tail)
    {
        string book = Path.Combine(Call.Root, "books", "curlew");
        BookShelf shelf = BookShelf.Open(book, new DiagnosticList())!;
        SessionStart start = new("4107", "idle, nothing wrong", 1, 0);
        RecordHeader header = new(RecordHeader.CurrentFormat, shelf.Book.Title, BookHash.Of(book), start);
        long shut = SimTime.FromSeconds(20.25).Ticks;
        RecordLine[] lines = [new(shut, new WorldAction.Operate(-1, "aft supply valve", "closed")), new(SimTime.FromSeconds(90).Ticks)];
        string hash = tail.Length > 0 ? tail : $"{Replay.Hash(shelf.PlanOf("4107"), new(header, [.. lines])):x16}";
        string file = scratch.At("session.jsonl");
        using RecordFile record = RecordFile.Create(file, header);
        foreach (RecordLine line in lines.Append(new(lines[^1].At, null, hash)))
        {
            record.Append(line);
        }

        return file;
    }
}
