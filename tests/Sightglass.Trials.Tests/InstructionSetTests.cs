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

    private static readonly Lazy<string> s_outcomes = new(Outcomes);

    [Theory]
    [InlineData("DOTNET_EnableAVX512")]
    [InlineData("DOTNET_EnableAVX2")]
    public async Task Run_InstructionSetOff_SameOutcomes(string setting)
    {
        string found = s_outcomes.Value;
        if (Environment.GetEnvironmentVariable(Expected) is { } expected)
        {
            Assert.False(Environment.GetEnvironmentVariable("DOTNET_EnableAVX512") == "0" && Avx512F.IsSupported, "AVX-512 was to be off");
            Assert.False(Environment.GetEnvironmentVariable("DOTNET_EnableAVX2") == "0" && Avx2.IsSupported, "AVX2 was to be off");
            Assert.Equal(expected, found);
            return;
        }

        string told = await ChildTest.Again(typeof(InstructionSetTests), (setting, "0"), (Expected, found));
        Assert.Contains("succeeded: 2", told, StringComparison.Ordinal);
    }

    /// <summary>Of a card of each system, on each road number once, and of a train; eight cases of one machine fill its lanes; of the first there are so many that lanes of two banks take their attempts together.</summary>
    private static string Outcomes() => string.Join(' ', new (string Card, string Situation, string Number, int Cases)[]
    {
        ("empty-a-leaking-compartment", "leaking compartment", "4112", 64),
        ("empty-a-leaking-compartment", "leaking compartment", "4107", 8),
        ("prime-a-starved-engine", "starving engine", "4101", 8),
        ("charge-from-nothing", "air from nothing", "4104", 8),
        ("couple-the-air-of-a-train", "engine change", "4104", 8),
        ("find-a-ground", "a ground on the positive side", "4104", 8),
        ("test-the-cab-signals", "cab signals before departure", "4101", 8),
        ("axle-box-is-warm", "stopped for a warm axle box", "4112", 8),
        ("one-side-of-head-end-power", "one side of head-end power lost", "4107", 8),
    }.SelectMany(t => CaseSweep.Run(SweepTests.Setup(t.Card, t.Situation, t.Number), new() { Cases = t.Cases, Threads = 1 })).Select(o => $"{o.Kind} {o.Step} {o.Time.Ticks} {o.Hash:x16}"));
}
