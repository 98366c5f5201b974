using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.RegularExpressions;

namespace Sightglass.Bench;

/// <summary>The baseline programs that bench/cvode/build.sh makes, run one scenario at a time.</summary>
internal sealed partial class Baseline(string folder)
{
    /// <summary>Linked with Debian's libraries.</summary>
    public const string Debian = "cv-debian";

    /// <summary>Rebuilt for this machine.</summary>
    public const string Native = "cv-native";

    /// <summary>Times one scenario.</summary>
    /// <param name="variant"><see cref="Debian"/> or <see cref="Native"/>.</param>
    /// <param name="problem">Path of a <c>.net</c> file.</param>
    /// <param name="lane">Which variation; 0 is the problem as it stands.</param>
    /// <param name="relativeTolerance">Its absolute tolerance is a tenth of it.</param>
    public BaselineResult Time(string variant, string problem, int lane, double relativeTolerance, int repetitions) =>
        Run(variant, problem, lane, relativeTolerance, repetitions, "-", sample: false);

    /// <summary>The potentials at every sampling moment, node by node.</summary>
    public (BaselineResult Result, double[] Values) Sample(string variant, string problem, double relativeTolerance)
    {
        string file = Path.Combine(folder, "samples.bin");
        BaselineResult result = Run(variant, problem, 0, relativeTolerance, 1, file, sample: true);
        return (result, MemoryMarshal.Cast<byte, double>(File.ReadAllBytes(file)).ToArray());
    }

    private BaselineResult Run(string variant, string problem, int lane, double relativeTolerance, int repetitions, string output, bool sample)
    {
        string solver = problem.Contains("fuel", StringComparison.Ordinal) ? "dense" : "klu";
        ProcessStartInfo start = new(Path.Combine(folder, variant))
        {
            RedirectStandardOutput = true,
            ArgumentList =
            {
                problem, solver, Invariant(relativeTolerance), Invariant(relativeTolerance * 0.1), Invariant(repetitions), output,
                Invariant(lane), "0", sample ? "1" : "0",
            },
        };
        start.Environment["NLC"] = "0.01";
        using Process process = Process.Start(start)!;
        string text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Match match = Line().Match(text);
        return process.ExitCode == 0 && match.Success
            ? new(Number(match.Groups["ms"].Value) * 1e-3, (long)Number(match.Groups["steps"].Value), [.. match.Groups["event"].Captures.Select(c => Number(c.Value))])
            : throw new InvalidOperationException($"The baseline failed: {text}");
    }

    private static string Invariant(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"med (?<ms>[\d.]+) ms .*\| steps (?<steps>\d+) .*events \d+:(?: (?<event>[\d.]+))*")]
    private static partial Regex Line();
}
