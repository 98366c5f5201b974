using System.ComponentModel;
using System.Diagnostics;

namespace Sightglass.Cli.Tests;

/// <summary>
/// The program in a process of its own, started in the repository's root. It hears Ctrl-C even where these tests do not, as when a shell runs them beside others.
/// </summary>
internal static class CliProcess
{
    public static Process Start(IEnumerable<string> arguments) => Process.Start(new ProcessStartInfo("env", ["--default-signal=INT", "dotnet", "exec", typeof(CommandLine).Assembly.Location, .. arguments])
    {
        WorkingDirectory = Call.Root,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;

    /// <summary>Waits until it has worked so long in all, in time of processors: however busy the machine is, it has come as far; or until it has ended.</summary>
    public static async Task Work(Process process, TimeSpan time)
    {
        while (Worked(process) < time)
        {
            await Task.Delay(5, TestContext.Current.CancellationToken);
        }
    }

    /// <summary>Without end, once it has ended.</summary>
    public static TimeSpan Worked(Process process)
    {
        try
        {
            return process.HasExited ? TimeSpan.MaxValue : process.TotalProcessorTime;
        }
        catch (Exception e) when (e is InvalidOperationException or Win32Exception)
        {
            return TimeSpan.MaxValue; // ended between the two
        }
    }

    /// <summary>Waits for its end.</summary>
    public static async Task<Call> End(Process process)
    {
        Task<string> errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        string told = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return new(process.ExitCode, told, await errors);
    }
}
