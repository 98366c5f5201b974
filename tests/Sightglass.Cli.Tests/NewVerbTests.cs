namespace Sightglass.Cli.Tests;

public sealed class NewVerbTests
{
    [Fact]
    public async Task New_InAFolderOfItsOwn_MakesABookThatChecksAndRuns()
    {
        using ScratchFolder scratch = new();
        string folder = scratch.At("heron");
        Assert.Equal(ExitCode.Good, (await Call.Of("new", folder, "--title", "Heron: \"new\"")).Exit);
        Call check = await Call.Of("check", folder);
        Assert.True(check.Exit == ExitCode.Good, check.Output);
        Call run = await Call.Of("run", "--book", folder, "--for", "10min");
        Assert.True(run.Exit == ExitCode.Good, run.Error);
        Assert.StartsWith("Heron: \"new\": draining", run.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(folder, "book.schema.json")));
    }

    [Fact]
    public async Task New_WhereSomethingIs_TouchesNothing()
    {
        using ScratchFolder scratch = new();
        string file = scratch.Write("book.yaml", "mine");
        Call call = await Call.Of("new", scratch.Folder);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Equal("mine", await File.ReadAllTextAsync(file));
        Assert.Single(Directory.EnumerateFileSystemEntries(scratch.Folder));
    }
}
