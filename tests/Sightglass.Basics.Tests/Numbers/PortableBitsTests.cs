using System.Runtime.Intrinsics;
using Sightglass.Basics.Draws;
using Sightglass.Basics.Numbers;

namespace Sightglass.Basics.Tests.Numbers;

/// <summary>
/// The bits themselves, which no processor and no vector width may change. The hash was taken on a processor with AVX-512;
/// it was the same with AVX-512, AVX2 and all vector instructions switched off (DOTNET_EnableAVX512=0, DOTNET_EnableAVX2=0, DOTNET_EnableHWIntrinsic=0).
/// </summary>
public sealed class PortableBitsTests
{
    private static readonly DrawKey s_key = DrawKey.Of("portable bits");

    [Fact]
    public void Lanes_AllOperations_HaveTheBitsTheyHadElsewhere()
    {
        ulong hash = TrajectoryHash.Start;
        Span<double> a = stackalloc double[Lanes.Count];
        Span<double> b = stackalloc double[Lanes.Count];
        for (ulong i = 0; i < 8_000; i += Lanes.Count)
        {
            for (int lane = 0; lane < Lanes.Count; lane++)
            {
                a[lane] = Draw.Between(1, i + (ulong)lane, s_key, 1e-3, 1e3);
                b[lane] = Draw.Between(2, i + (ulong)lane, s_key, -3, 3);
            }

            Add(ref hash, new(Vector512.Create<double>(a)), new(Vector512.Create<double>(b)));
        }

        Assert.Equal("d47f9c4673e1afde", hash.ToString("x16", System.Globalization.CultureInfo.InvariantCulture));
    }

    private static void Add(ref ulong hash, Lanes a, Lanes b)
    {
        Lanes[] results =
        [
            a + b, a - b, a * b, a / b, Lanes.Sqrt(a), Lanes.Fma(a, b, a), Lanes.Min(a, b), Lanes.Max(a, b), Lanes.Floor(b), Lanes.Abs(b),
            Lanes.Select(Lanes.Less(b, a), -a, b), Cube.Root(b), Portable.Exp(b), Portable.Log(a), Portable.Pow(a, b),
        ];
        foreach (Lanes result in results)
        {
            for (int lane = 0; lane < Lanes.Count; lane++)
            {
                hash = TrajectoryHash.Add(hash, result[lane]);
            }
        }
    }
}
