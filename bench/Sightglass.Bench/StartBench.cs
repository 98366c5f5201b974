using System.Diagnostics;
using System.Globalization;

namespace Sightglass.Bench;

/// <summary>How long the command line takes from a standing start: whole processes of the built program, as a person waits for them.</summary>
internal static class StartBench
{
    public static void Run(Report report, int rounds)
    {
        string built = Path.Combine(Paths.Root, "src", "Sightglass.Cli", "bin", "Release", "net10.0", "Sightglass.Cli.dll");
        string installed = Path.Combine(Paths.Root, "out", "bench", "installed", "bin", "sightglass");
        string[][] words = [["check", "books/smallest"], ["check", "books/curlew"], ["--help"]];
        (string Name, string[] Call)[] calls =
        [
            .. words.Select(w => ($"built: `{string.Join(' ', w)}`", (string[])["dotnet", "exec", built, .. w])),
            .. words.Select(w => ($"installed: `{string.Join(' ', w)}`", (string[])[installed, .. w])),
        ];
        List<(double Wall, double User)>[] times = [.. calls.Select(_ => new List<(double, double)>())];
        for (int round = 0; round <= rounds; round++)
        {
            for (int i = 0; i < calls.Length; i++)
            {
                (double, double) time = Time(calls[i].Call);
                if (round > 0)
                {
                    times[i].Add(time); // the first round brings the files into memory
                }
            }
        }

        report.Section("From a standing start");
        report.Line($"Whole processes, of the release build and as `./install` compiles it ahead of time, files already in memory; least and median of {rounds}. Goal for `check`: ≤ 0.5 s.");
        report.Line();
        report.Header("call", "least, s", "median, s", "processor time in the program, least, s", "median, s");
        for (int i = 0; i < calls.Length; i++)
        {
            double[] wall = [.. times[i].Select(t => t.Wall).Order()];
            double[] user = [.. times[i].Select(t => t.User).Order()];
            report.Row(calls[i].Name, F(wall[0]), F(wall[wall.Length / 2]), F(user[0]), F(user[user.Length / 2]));
        }
    }

    /// <summary>Timed by the shell, which is told by the system what its child used.</summary>
    private static (double Wall, double User) Time(string[] call)
    {
        ProcessStartInfo start = new("bash", ["-c", "TIMEFORMAT='%R %U'; time \"$@\" >/dev/null 2>&1", "time", .. call])
        {
            WorkingDirectory = Paths.Root,
            RedirectStandardError = true,
            Environment = { ["LC_ALL"] = "C" },
        };
        using Process process = Process.Start(start)!;
        string[] times = process.StandardError.ReadToEnd().Trim().Split(' ');
        process.WaitForExit();
        return process.ExitCode == 0
            ? (double.Parse(times[0], CultureInfo.InvariantCulture), double.Parse(times[1], CultureInfo.InvariantCulture))
            : throw new InvalidOperationException($"`{string.Join(' ', call)}` ended with {process.ExitCode}.");
    }

    private static string F(double value) => value.ToString("0.000", CultureInfo.InvariantCulture);
}
