using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Sightglass.Basics.Statistics;

namespace Sightglass.Cli.Tests;

/// <summary>Ctrl-C in a long trial (SIGINT to a process of its own): what is done is told and kept, with the bound that holds whenever one stops.</summary>
public sealed partial class StoppedTryTests
{
    private const int Cases = 1_000_000;

    private static readonly string[] s_try = ["try", "empty-a-leaking-compartment-draft", "-s", "leaking compartment"];

    [Fact]
    public async Task Try_Interrupted_TellsAndKeepsTheFirstCases()
    {
        using ScratchFolder scratch = new();
        (string csv, string html, string again) = (scratch.At("kept.csv"), scratch.At("kept.html"), scratch.At("again.csv"));
        Call call = await Interrupted("--outcomes", csv, "--html", html);
        Assert.True(call.Exit == ExitCode.No, call.Output + call.Error);
        int tried = int.Parse(Tried().Match(call.Output).Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.InRange(tried, 1, Cases - 1);
        Assert.Contains($"{tried} cases it is for", call.Output, StringComparison.Ordinal);
        Assert.Contains($"Stopped early, {Cases - tried} cases not run.", call.Output, StringComparison.Ordinal);

        string kept = await File.ReadAllTextAsync(csv, TestContext.Current.CancellationToken);
        await Call.Of([.. s_try, "--cases", $"{tried}", "--outcomes", again]);
        Assert.Equal(await File.ReadAllTextAsync(again, TestContext.Current.CancellationToken), kept);

        string page = await File.ReadAllTextAsync(html, TestContext.Current.CancellationToken);
        Assert.Contains($"Tried by simulation in {tried} cases", page, StringComparison.Ordinal);
        Assert.EndsWith("</body></html>", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Try_InterruptedWithJson_AnswersWholeWithTheBoundOfWhatIsDone()
    {
        Call call = await Interrupted("--json");
        Assert.True(call.Exit == ExitCode.No, call.Output + call.Error);
        JsonElement trial = JsonDocument.Parse(call.Output).RootElement.GetProperty("trials")[0];
        int Number(string name) => trial.GetProperty(name).GetInt32();
        Assert.True(trial.GetProperty("stopped_early").GetBoolean());
        Assert.Equal(Cases, Number("cases"));
        Assert.Equal(Cases - Number("not_run"), Number("applicable"));
        Assert.Equal(Number("applicable"), Number("done") + Number("stopped") + Number("failed") + Number("undecided"));
        Assert.Equal(AnytimeBound.Lower(Number("done") + Number("stopped"), Number("applicable"), 0.95), trial.GetProperty("lower_bound").GetDouble(), 1e-12);
    }

    /// <summary>Interrupted once it has worked for ten seconds of its own: starting, reading the book and its plans takes less even on a busy machine, a million cases take minutes.</summary>
    private static async Task<Call> Interrupted(params string[] more)
    {
        using Process process = CliProcess.Start([.. s_try, "--cases", $"{Cases}", .. more]);
        await CliProcess.Work(process, TimeSpan.FromSeconds(10));
        using Process signal = Process.Start("kill", ["-INT", $"{process.Id}"]);
        Call call = await CliProcess.End(process);
        await signal.WaitForExitAsync(TestContext.Current.CancellationToken);
        return call;
    }

    [GeneratedRegex("tried by simulation in ([0-9]+) cases")]
    private static partial Regex Tried();
}
