using System.Diagnostics;

namespace Sightglass.Cli.Tests;

/// <summary>The program in a process of its own, started in the repository's root.</summary>
internal static class CliProcess
{
    public static Process Start(IEnumerable<string> arguments) => Process.Start(new ProcessStartInfo("dotnet", ["exec", typeof(CommandLine).Assembly.Location, .. arguments])
    {
        WorkingDirectory = Call.Root,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;

    /// <summary>Waits for its end.</summary>
    public static async Task<Call> End(Process process)
    {
        Task<string> errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        string told = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return new(process.ExitCode, told, await errors);
    }
}
