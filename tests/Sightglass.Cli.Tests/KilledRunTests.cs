using System.Diagnostics;
using System.Text.Json;

namespace Sightglass.Cli.Tests;

/// <summary><c>run --save</c> and <c>run --from</c>: a process that is killed (SIGKILL) at a moment of chance leaves a file from which another ends the run.</summary>
public sealed class KilledRunTests
{
    private static readonly string[] s_run = ["run", "leaking compartment", "--card", "empty-a-leaking-compartment", "--json"];

    /// <summary>Of each system and of a train.</summary>
    [Theory]
    [InlineData("leaking compartment", "empty-a-leaking-compartment", 4, 500)]
    [InlineData("engine change", "couple-the-air-of-a-train", 2, 3000)]
    public async Task Run_KilledAndTakenUpByAnotherProcess_EndsInTheSameHash(string situation, string card, int kills, int withinMilliseconds)
    {
        string[] run = ["run", situation, "--card", card, "--json"];
        using ScratchFolder scratch = new();
        Random chance = new(11);
        int killed = 0;
        HashSet<string> moments = [];
        for (int number = 0; number < 4 * kills && killed < kills; number++)
        {
            string file = scratch.At($"run-{number}.json");
            if (!await Kill(run, file, number, chance.Next(withinMilliseconds)))
            {
                continue;
            }

            killed++;
            moments.Add(JsonDocument.Parse(JsonDocument.Parse(File.ReadAllText(file)).RootElement.GetProperty("World").GetString()!).RootElement.GetProperty("Now").ToString());
            (int exit, string told) = await InAProcess("run", "--from", file, "--json");
            Assert.True(exit == ExitCode.Good, told);
            Assert.Equal(await Answer([.. run, "--case", $"{number}"]), Of(told));
        }

        Assert.Equal(kills, killed);
        Assert.True(moments.Count > 1, "the runs were killed at the same moment");
    }

    [Fact]
    public async Task Run_KeptInAFile_IsTheSameRun()
    {
        using ScratchFolder scratch = new();
        string file = scratch.At("run.json");
        Assert.Equal(await Answer([.. s_run, "--case", "3"]), await Answer([.. s_run, "--case", "3", "--save", file, "--save-every", "7 s"]));
        Assert.Equal(await Answer([.. s_run, "--case", "3"]), await Answer(["run", "--from", file, "--json"]));
    }

    [Theory]
    [InlineData("no file `", "--from", "no-such.json")]
    [InlineData("not a run kept by", "--from", "docs/schemas/run-answer.json")]
    [InlineData("leave out --case", "--from", "README.md", "--case", "3")]
    [InlineData("leave out --save", "--record", "README.md", "--save", "x.json")]
    public async Task Run_WithoutAProperFile_SaysWhatIsWrong(string says, params string[] arguments)
    {
        Call call = await Call.Of(["run", .. arguments]);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(says, call.Error, StringComparison.Ordinal);
    }

    /// <summary>Killed when it has worked so long since there is a file. True when the process was killed while it ran, with a file to go on from.</summary>
    private static async Task<bool> Kill(string[] run, string file, int number, int milliseconds)
    {
        using Process process = CliProcess.Start([.. run, "--case", $"{number}", "--save", file, "--save-every", "1 s"]);
        Task<string> told = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        while (!File.Exists(file) && !process.HasExited)
        {
            await Task.Delay(5, TestContext.Current.CancellationToken);
        }

        if (CliProcess.Worked(process) is var before && before < TimeSpan.MaxValue)
        {
            await CliProcess.Work(process, before + TimeSpan.FromMilliseconds(milliseconds));
        }

        process.Kill();
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        await told;
        return process.ExitCode == 137;
    }

    private static async Task<(int Exit, string Told)> InAProcess(params string[] arguments)
    {
        using Process process = CliProcess.Start(arguments);
        Call call = await CliProcess.End(process);
        return (call.Exit, call.Output.Length > 0 ? call.Output : call.Error);
    }

    private static async Task<(string, string, double, long)> Answer(string[] arguments) => Of((await Call.Of(arguments)).Output);

    private static (string Hash, string Outcome, double End, long Steps) Of(string text)
    {
        JsonElement root = JsonDocument.Parse(text).RootElement;
        return (root.GetProperty("hash").GetString()!, root.GetProperty("outcome").GetString()!, root.GetProperty("end_s").GetDouble(), root.GetProperty("steps").GetInt64());
    }
}
