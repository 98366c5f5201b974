using System.Runtime.Intrinsics.X86;
using Sightglass.Network.Circuits;
using Sightglass.Network.Phasors;
using Sightglass.Network.Springs;
using Sightglass.Network.Tests.Circuits;
using Sightglass.Network.Tests.Phasors;
using Sightglass.Network.Tests.Springs;
using Sightglass.Tests.Support;

namespace Sightglass.Network.Tests;

/// <summary>The same bits whatever the processor can do: this test starts itself again with instruction sets switched off, and the second process compares.</summary>
public sealed class SameBitsTests
{
    private const string Expected = "SIGHTGLASS_TEST_EXPECTED";

    [Theory]
    [InlineData("DOTNET_EnableAVX")]
    [InlineData("DOTNET_EnableAVX2")]
    public async Task Solvers_InstructionSetOff_SameBits(string setting)
    {
        string found = Found();
        if (Environment.GetEnvironmentVariable(Expected) is { } expected)
        {
            Assert.False(Environment.GetEnvironmentVariable("DOTNET_EnableAVX") == "0" && Avx.IsSupported, "AVX was to be off");
            Assert.False(Environment.GetEnvironmentVariable("DOTNET_EnableAVX2") == "0" && Avx2.IsSupported, "AVX2 was to be off");
            Assert.Equal(expected, found);
            return;
        }

        string told = await ChildTest.Again(typeof(SameBitsTests), (setting, "0"), (Expected, found));
        Assert.Contains("succeeded: 2", told, StringComparison.Ordinal);
    }

    /// <summary>Of a trainline with a sneak path, an unbalanced looped train and a vehicle with a soft spring.</summary>
    private static string Found()
    {
        Trainline line = new(5, turned: 2);
        CircuitState circuit = line.With((line.Command(16), 1), (line.Command(8), 0.7), (line.Pin(2, Trainline.Negative), 0));
        FlowRig rig = new();
        Terminal[] at = rig.Source("supply", FlowRig.Volts480);
        for (int i = 0; i < 6; i++)
        {
            Terminal[] next = rig.Place($"{i}");
            rig.Join($"span {i}", at, next, new Phasor(0.003, 0.0031), new Phasor(0.0011, 0.001));
            rig.Loads($"car {i}", next, (LoadKind)(i % 3), FlowRig.Volts480, 8000 + (700 * i), 3000, floor: 0.7);
            at = next;
        }

        Stack stack = new(Stack.Ordinary with { X = 0.3, Y = 0.1 });
        SuspensionState springs = stack.With((stack.Softened[3], 0.3));
        return string.Join(' ', circuit.Voltages.ToArray().Concat(rig.Solve().Voltages.ToArray().SelectMany(v => new[] { v.Re, v.Im })).Concat(springs.Forces.ToArray()).Select(v => $"{BitConverter.DoubleToInt64Bits(v):x}"));
    }
}
