using CsCheck;
using Sightglass.Drawing.Ladder;

namespace Sightglass.Drawing.Tests.Ladder;

/// <summary>Circuits to draw.</summary>
internal static class Circuits
{
    /// <summary>Any circuit: up to a dozen wires, the frame perhaps among them, and up to thirty parts between any two of them.</summary>
    public static Gen<LadderInput> Any { get; } =
        from wires in Gen.Int[2, 12]
        from parts in Gen.Select(Gen.Int[0, wires - 1], Gen.Int[1, wires - 1], Gen.Int[0, 9]).Array[1, 30]
        select Of(wires, parts);

    private static LadderInput Of(int wires, (int From, int Step, int Symbol)[] parts) => new(
        "any",
        [.. Enumerable.Range(0, wires).Select(i => new LadderWire($"w{i}", $"wire {i}") { IsFrame = i == 2 })],
        [.. parts.Select((p, i) => new LadderPart($"part {i}", i % 3 == 0 ? "a part with a rather long name" : $"part {i}", $"w{p.From}", $"w{(p.From + p.Step) % wires}", (LadderSymbol)p.Symbol))]);
}
