using System.Text.Json;
using Sightglass.Storage;

namespace Sightglass.Cli.Tests;

public sealed class ServeVerbTests
{
    [Theory]
    [InlineData("Curlew", "serve")]
    [InlineData("Two cabs", "start", "books/two-cabs", "--cases", "8")]
    public async Task Serve_UntilStopped_AnswersAtTheAddressItTold(string book, params string[] verb)
    {
        Directory.SetCurrentDirectory(Call.Root);
        using ScratchFolder scratch = new();
        using CancellationTokenSource stop = new(TimeSpan.FromMinutes(3));
        FirstAnswer output = new();
        StringWriter error = new();
        Task<int> serving = CommandLine.RunAsync([.. verb, "--port", "0", "--records", scratch.Folder, "--data", Path.Combine(scratch.Folder, "data"), "--json"], output, error, stop.Token);
        await Task.WhenAny(output.Whole, serving);
        Assert.False(serving.IsCompleted, error.ToString());
        JsonElement answer = JsonDocument.Parse(await output.Whole).RootElement;
        using HttpClient client = new();
        string page = await client.GetStringAsync(new Uri(answer.GetProperty("address").GetString()!), stop.Token);
        Assert.Contains(book, page, StringComparison.Ordinal);
        await stop.CancelAsync();
        Assert.Equal(ExitCode.Good, await serving);
    }

    [Fact]
    public async Task Serve_Shared_TellsAddressDigitsAndFingerprint()
    {
        Directory.SetCurrentDirectory(Call.Root);
        using ScratchFolder scratch = new();
        using CancellationTokenSource stop = new(TimeSpan.FromMinutes(3));
        FirstAnswer output = new();
        StringWriter error = new();
        Task<int> serving = CommandLine.RunAsync(["serve", Path.Combine("books", "smallest"), "--port", "0", "--share", "--share-port", "0", "--records", scratch.Folder, "--data", Path.Combine(scratch.Folder, "data"), "--json"], output, error, stop.Token);
        await Task.WhenAny(output.Whole, serving);
        await stop.CancelAsync();
        Assert.Equal(ExitCode.Good, await serving);
        Assert.Matches(@"open https://[^ ]+/walkdown/ and type \d{4} \d{4}\.", error.ToString());
        Assert.Matches("fingerprint: ([0-9A-F]{2} ){31}[0-9A-F]{2}", error.ToString());
    }

    [Fact]
    public async Task Serve_ADataFolderThatIsOpen_IsRefusedWithASentence()
    {
        using ScratchFolder scratch = new();
        using DataFolder open = DataFolder.Open(Path.Combine(scratch.Folder, "data"));
        Call call = await Call.Of("serve", Path.Combine("books", "smallest"), "--port", "0", "--records", scratch.Folder, "--data", open.Path);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains("already open", call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Serve_ABookWithErrors_SaysNo()
    {
        using ScratchFolder scratch = new();
        scratch.Write("book.yaml", "book: Broken\nitems:\n  tank: { kind: tnak }\n");
        foreach (string verb in new[] { "serve", "start" })
        {
            Call call = await Call.Of(verb, scratch.Folder, "--port", "0");
            Assert.Equal(ExitCode.No, call.Exit);
            Assert.Contains("did you mean `tank`?", call.Error, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("serve", "--port", "70000")]
    [InlineData("serve", "no-such-folder")]
    [InlineData("start", "--cases", "-1")]
    public async Task Serve_CalledWrongly_SaysSo(params string[] arguments)
    {
        Call call = await Call.Of(arguments);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.NotEmpty(call.Error);
    }
}
