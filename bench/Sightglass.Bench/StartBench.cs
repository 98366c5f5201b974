using System.Diagnostics;
using System.Globalization;

namespace Sightglass.Bench;

/// <summary>How long the command line takes from a standing start: whole processes of the built program, as a person waits for them.</summary>
internal static class StartBench
{
    public static void Run(Report report, int rounds)
    {
        string program = Path.Combine(Paths.Root, "src", "Sightglass.Cli", "bin", "Release", "net10.0", "Sightglass.Cli.dll");
        string[][] calls = [["check", "books/smallest"], ["check", "books/curlew"], ["--help"]];
        List<(double Wall, double User)>[] times = [.. calls.Select(_ => new List<(double, double)>())];
        for (int round = 0; round <= rounds; round++)
        {
            for (int i = 0; i < calls.Length; i++)
            {
                (double, double) time = Time(program, calls[i]);
                if (round > 0)
                {
                    times[i].Add(time); // the first round brings the files into memory
                }
            }
        }

        report.Section("From a standing start");
        report.Line($"Whole processes, `dotnet Sightglass.Cli.dll …` of the release build, files already in memory; least and median of {rounds}. Goal for `check`: ≤ 0.5 s.");
        report.Line();
        report.Header("call", "least, s", "median, s", "processor time in the program, least, s", "median, s");
        for (int i = 0; i < calls.Length; i++)
        {
            double[] wall = [.. times[i].Select(t => t.Wall).Order()];
            double[] user = [.. times[i].Select(t => t.User).Order()];
            report.Row($"`{string.Join(' ', calls[i])}`", F(wall[0]), F(wall[wall.Length / 2]), F(user[0]), F(user[user.Length / 2]));
        }
    }

    private static (double Wall, double User) Time(string program, string[] call)
    {
        ProcessStartInfo start = new("dotnet", ["exec", program, .. call])
        {
            WorkingDirectory = Paths.Root,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        long began = Stopwatch.GetTimestamp();
        using Process process = Process.Start(start)!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        double wall = Stopwatch.GetElapsedTime(began).TotalSeconds;
        return process.ExitCode == 0
            ? (wall, process.UserProcessorTime.TotalSeconds)
            : throw new InvalidOperationException($"`{string.Join(' ', call)}` ended with {process.ExitCode}: {error.Result}");
    }

    private static string F(double value) => value.ToString("0.000", CultureInfo.InvariantCulture);
}
