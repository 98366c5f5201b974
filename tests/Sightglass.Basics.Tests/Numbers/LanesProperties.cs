using Sightglass.Basics.Numbers;

namespace Sightglass.Basics.Tests.Numbers;

public sealed class LanesProperties
{
    public static TheoryData<string> Operations => [.. Pairs.Keys];

    private static Dictionary<string, (Eight.OnLanes Lanes, Eight.OnScalar Scalar)> Pairs { get; } = new()
    {
        ["+"] = ((a, b) => a + b, (a, b) => a + b),
        ["-"] = ((a, b) => a - b, (a, b) => a - b),
        ["*"] = ((a, b) => a * b, (a, b) => a * b),
        ["/"] = ((a, b) => a / b, (a, b) => a / b),
        ["negative"] = ((a, _) => -a, (a, _) => -a),
        ["Abs"] = ((a, _) => Lanes.Abs(a), (a, _) => Scalar.Abs(a)),
        ["Sqrt"] = ((a, _) => Lanes.Sqrt(a), (a, _) => Scalar.Sqrt(a)),
        ["Fma"] = ((a, b) => Lanes.Fma(a, b, a), (a, b) => Scalar.Fma(a, b, a)),
        ["Min"] = ((a, b) => Lanes.Min(a, b), (a, b) => Scalar.Min(a, b)),
        ["Max"] = ((a, b) => Lanes.Max(a, b), (a, b) => Scalar.Max(a, b)),
        ["Less"] = ((a, b) => Lanes.Select(Lanes.Less(a, b), a, b), (a, b) => Scalar.Select(Scalar.Less(a, b), a, b)),
        ["LessOrEqual"] = ((a, b) => Lanes.Select(Lanes.LessOrEqual(a, b), b, a), (a, b) => Scalar.Select(Scalar.LessOrEqual(a, b), b, a)),
        ["And"] = ((a, b) => Lanes.And(a, b), (a, b) => Scalar.And(a, b)),
        ["Or"] = ((a, b) => Lanes.Or(a, b), (a, b) => Scalar.Or(a, b)),
    };

    [Theory]
    [MemberData(nameof(Operations))]
    public void Operation_Lanes_AgreeWithScalar(string name)
    {
        (Eight.OnLanes lanes, Eight.OnScalar scalar) = Pairs[name];
        Eight.MustAgree(name, Eight.AnyMagnitude, Eight.AnyMagnitude, lanes, scalar);
        Eight.MustAgree(name, u => Math.Round((u * 6) - 3), u => Math.Round((u * 6) - 3), lanes, scalar);
    }

    /// <summary>Of two that are not numbers or zeros of either sign, the second.</summary>
    [Fact]
    public void MinAndMax_OfSpecialNumbers_AgreeWithScalar()
    {
        double[] special = [0.0, -0.0, double.NaN, double.PositiveInfinity, double.NegativeInfinity, 1.0];
        foreach (double a in special)
        {
            foreach (double b in special)
            {
                Assert.Equal(BitConverter.DoubleToInt64Bits(Scalar.Min(new(a), new(b)).V), BitConverter.DoubleToInt64Bits(Lanes.Min(Lanes.Of(a), Lanes.Of(b))[3]));
                Assert.Equal(BitConverter.DoubleToInt64Bits(Scalar.Max(new(a), new(b)).V), BitConverter.DoubleToInt64Bits(Lanes.Max(Lanes.Of(a), Lanes.Of(b))[3]));
            }
        }
    }

    [Fact]
    public void MaskOf_EveryChoiceOfLanes_IsOnesThereAndGivesTheBitsBack()
    {
        for (uint lanes = 0; lanes < 256; lanes++)
        {
            Lanes mask = Lanes.MaskOf(lanes);
            Assert.Equal(lanes, Lanes.BitsOf(mask));
            Assert.All(Enumerable.Range(0, Lanes.Count), lane => Assert.Equal((lanes >> lane & 1) != 0 ? -1 : 0, BitConverter.DoubleToInt64Bits(mask[lane])));
        }
    }

    [Fact]
    public void Floor_Lanes_AgreeWithScalar() =>
        Eight.MustAgree("Floor", u => (u * 2e6) - 1e6, u => u, (a, _) => Lanes.Floor(a), (a, _) => Scalar.Floor(a));

    [Fact]
    public void CbrtSeed_Lanes_AgreeWithScalar() =>
        Eight.MustAgree("CbrtSeed", Eight.Positive, u => u, (a, _) => Lanes.CbrtSeed(a), (a, _) => Scalar.CbrtSeed(a));

    [Fact]
    public void ExponentAndSignificand_Lanes_AgreeWithScalar()
    {
        Eight.MustAgree("ExponentOf", Eight.Positive, u => u, (a, _) => Lanes.ExponentOf(a), (a, _) => Scalar.ExponentOf(a));
        Eight.MustAgree("SignificandOf", Eight.Positive, u => u, (a, _) => Lanes.SignificandOf(a), (a, _) => Scalar.SignificandOf(a));
    }

    [Fact]
    public void ScaleByPowerOfTwo_Lanes_AgreeWithScalar() => Eight.MustAgree(
        "Scale", u => (u * 4) - 2 is var x && x == 0 ? 1 : x, u => Math.Round((u * 1800) - 900),
        (a, n) => Lanes.ScaleByPowerOfTwo(a, n), (a, n) => Scalar.ScaleByPowerOfTwo(a, n));

    [Fact]
    public void CubeRoot_Lanes_AgreeWithScalar()
    {
        Eight.MustAgree("Cube.Root", Eight.AnyMagnitude, u => u, (a, _) => Cube.Root(a), (a, _) => Cube.Root(a));
        Eight.MustAgree("Cube.Root", u => (u * 2) - 1, u => u, (a, _) => Cube.Root(a), (a, _) => Cube.Root(a));
    }

    [Fact]
    public void Exp_Lanes_AgreeWithScalar() =>
        Eight.MustAgree("Exp", u => (u * 1600) - 800, u => u, (a, _) => Portable.Exp(a), (a, _) => Portable.Exp(a));

    [Fact]
    public void Log_Lanes_AgreeWithScalar() =>
        Eight.MustAgree("Log", Eight.AnyMagnitude, u => u, (a, _) => Portable.Log(a), (a, _) => Portable.Log(a));

    [Fact]
    public void Pow_Lanes_AgreeWithScalar()
    {
        Eight.MustAgree("Pow", Eight.Positive, u => (u * 4) - 2, (a, b) => Portable.Pow(a, b), (a, b) => Portable.Pow(a, b));
        Eight.MustAgree("Pow", u => u * 20, u => (u * 4) - 2, (a, b) => Portable.Pow(a, b), (a, b) => Portable.Pow(a, b));
    }
}
