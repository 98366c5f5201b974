using System.Globalization;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Sightglass.Bench;

/// <summary>What the figures were measured on.</summary>
internal static class Machine
{
    public static IEnumerable<string> Describe()
    {
        yield return $"- processor: {FromFile("/proc/cpuinfo", "model name")}, family {FromFile("/proc/cpuinfo", "cpu family")}, "
            + $"{Environment.ProcessorCount} cores for this machine, {FromFile("/proc/cpuinfo", "cache size")} cache; seen by the program: "
            + $"512 bits {Yes(Vector512.IsHardwareAccelerated)}, 256 bits {Yes(Vector256.IsHardwareAccelerated)}";
        yield return $"- memory: {FromFile("/proc/meminfo", "MemTotal")}";
        yield return $"- system: {FromFile("/etc/os-release", "PRETTY_NAME")}, kernel {Environment.OSVersion.Version}; {RuntimeInformation.FrameworkDescription}";
        yield return $"- compiler of the baseline: {Compiler()}";
        yield return $"- load before the run (1 min): {LoadAverage()}";
    }

    /// <summary>Average number of runnable processes over the last minute: above 1, the figures are not to be trusted.</summary>
    public static double Load() =>
        File.Exists("/proc/loadavg") ? double.Parse(File.ReadAllText("/proc/loadavg").Split(' ')[0], CultureInfo.InvariantCulture) : 0;

    private static string LoadAverage() => Load().ToString("0.00", CultureInfo.InvariantCulture);

    private static string Yes(bool yes) => yes ? "yes" : "no";

    private static string FromFile(string path, string key)
    {
        string? line = File.Exists(path) ? File.ReadLines(path).FirstOrDefault(l => l.StartsWith(key, StringComparison.Ordinal)) : null;
        return line is null ? "unknown" : line[(line.IndexOfAny([':', '=']) + 1)..].Trim().Trim('"');
    }

    private static string Compiler()
    {
        if (!Directory.Exists(Paths.Output))
        {
            return "not built here";
        }

        using System.Diagnostics.Process gcc = System.Diagnostics.Process.Start(
            new System.Diagnostics.ProcessStartInfo("gcc", "--version") { RedirectStandardOutput = true })!;
        return (gcc.StandardOutput.ReadLine() ?? "unknown") + ", -O3 -march=native -fno-math-errno";
    }
}
