using System.Text.RegularExpressions;

namespace Sightglass.Cli.Tests;

/// <summary>docs/guide/calculators.md is true: every call in it is made, and what stands below it is what came out. Set SIGHTGLASS_ACCEPT=1 to write the answers anew, then read the difference.</summary>
public sealed partial class CalculatorGuideTests
{
    private static readonly string s_path = Path.Combine(Call.Root, "docs", "guide", "calculators.md");

    [Fact]
    public async Task Guide_EveryCall_AnswersWhatStandsBelowIt()
    {
        string guide = (await File.ReadAllTextAsync(s_path)).ReplaceLineEndings("\n");
        Match[] calls = [.. Calls().Matches(guide).Cast<Match>()];
        Assert.True(calls.Length >= 4);
        Assert.Equal(calls.Length, guide.Split("-- calc").Length - 1);
        string made = guide;
        foreach (Match match in calls)
        {
            using ScratchFolder scratch = new();
            string[] words = [.. Words(match.Groups["call"].Value).Select(w => w.EndsWith(".svg", StringComparison.Ordinal) ? scratch.At(w) : w)];
            Call call = await Call.Of(words);
            Assert.True(call.Exit == ExitCode.Good, call.Error);
            Assert.All(words.Where(w => w.EndsWith(".svg", StringComparison.Ordinal)), f => Assert.StartsWith("<svg", File.ReadAllText(f), StringComparison.Ordinal));
            made = made.Replace(match.Value, match.Value.Replace(match.Groups["answer"].Value, call.Output.ReplaceLineEndings("\n"), StringComparison.Ordinal), StringComparison.Ordinal);
        }

        if (Environment.GetEnvironmentVariable("SIGHTGLASS_ACCEPT") == "1")
        {
            await File.WriteAllTextAsync(s_path, made);
        }

        Assert.Equal(made, guide);
    }

    private static IEnumerable<string> Words(string line) =>
        line.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    [GeneratedRegex("```\ndotnet run --project src/Sightglass\\.Cli -- (?<call>calc [^\n]*)\n```\n\n```text\n(?<answer>.*?)```\n", RegexOptions.Singleline)]
    private static partial Regex Calls();
}
