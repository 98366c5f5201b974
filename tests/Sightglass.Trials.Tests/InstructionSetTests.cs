using System.Diagnostics;
using System.Runtime.Intrinsics.X86;
using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;

namespace Sightglass.Trials.Tests;

/// <summary>
/// The same outcomes and hashes whatever the processor can do: this test starts itself again with instruction sets switched off and hands over what it
/// found, and the second process compares.
/// </summary>
public sealed class InstructionSetTests
{
    private const string Expected = "SIGHTGLASS_TEST_EXPECTED";

    [Theory]
    [InlineData("DOTNET_EnableAVX512")]
    [InlineData("DOTNET_EnableAVX2")]
    public async Task Run_InstructionSetOff_SameOutcomes(string setting)
    {
        string found = Outcomes();
        if (Environment.GetEnvironmentVariable(Expected) is { } expected)
        {
            Assert.False(Environment.GetEnvironmentVariable("DOTNET_EnableAVX512") == "0" && Avx512F.IsSupported, "AVX-512 was to be off");
            Assert.False(Environment.GetEnvironmentVariable("DOTNET_EnableAVX2") == "0" && Avx2.IsSupported, "AVX2 was to be off");
            Assert.Equal(expected, found);
            return;
        }

        ProcessStartInfo start = new("dotnet")
        {
            ArgumentList = { "exec", typeof(InstructionSetTests).Assembly.Location, "--filter-method", $"{typeof(InstructionSetTests).FullName}.*" },
            Environment = { [setting] = "0", [Expected] = found },
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using Process child = Process.Start(start)!;
        Task<string> errors = child.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        string told = await child.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await child.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(child.ExitCode == 0, told + await errors);
        Assert.Contains("succeeded: 2", told, StringComparison.Ordinal);
    }

    private static string Outcomes()
    {
        Outcome[] leak = CaseSweep.Run(SweepTests.Setup("empty-a-leaking-compartment", "leaking compartment"), new() { Cases = 24, Threads = 1 });
        Outcome[] prime = CaseSweep.Run(SweepTests.Setup("prime-a-starved-engine", "starving engine"), new() { Cases = 24, Threads = 1 });
        return string.Join(' ', leak.Concat(prime).Select(o => $"{o.Kind} {o.Step} {o.Time.Ticks} {o.Hash:x16}"));
    }
}
