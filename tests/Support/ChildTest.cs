using System.Diagnostics;

namespace Sightglass.Tests.Support;

/// <summary>Tests that start themselves again in a new process, which knows by its environment that it is the second.</summary>
internal static class ChildTest
{
    /// <summary>Runs all tests of a class in a process of its own and fails unless all of them pass there.</summary>
    /// <param name="tests">The class.</param>
    /// <param name="environment">What the process finds in its environment.</param>
    /// <returns>What it told.</returns>
    public static Task<string> Again(Type tests, params (string Name, string Value)[] environment) => Again(tests, "*", environment);

    /// <summary>Runs the tests of a class that have a name in a process of its own and fails unless all of them pass there.</summary>
    public static async Task<string> Again(Type tests, string method, params (string Name, string Value)[] environment)
    {
        ProcessStartInfo start = new("dotnet", ["exec", tests.Assembly.Location, "--filter-method", $"{tests.FullName}.{method}"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach ((string name, string value) in environment)
        {
            start.Environment[name] = value;
        }

        using Process child = Process.Start(start)!;
        Task<string> errors = child.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        string told = await child.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await child.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(child.ExitCode == 0, told + await errors);
        return told;
    }
}
