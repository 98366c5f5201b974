using System.Globalization;
using CsCheck;

namespace Sightglass.Tests.Support;

/// <summary>
/// Claims about everything a generator draws. A gate draws the same series in every run, so that a change fails
/// for what it changed; <c>SIGHTGLASS_EXPLORE=N</c> draws N times as many new ones (<c>./test --explore N</c>).
/// What exploring finds becomes a test of its own.
/// </summary>
internal static class Property
{
    private const int Ordinary = 100;

    private static readonly int s_explore = int.TryParse(Environment.GetEnvironmentVariable("SIGHTGLASS_EXPLORE"), CultureInfo.InvariantCulture, out int n) ? n : 0;

    public static void Holds<T>(this Gen<T> gen, Action<T> claim, int iter = Ordinary, Func<T, string>? print = null)
    {
        if (s_explore > 0)
        {
            gen.Sample(claim, iter: (long)iter * s_explore, print: print);
            return;
        }

        for (uint i = 0; i < iter; i++)
        {
            T value = gen.Generate(new PCG(i, 1), null, out _);
            try
            {
                claim(value);
            }
            catch (Exception e)
            {
                throw new InvalidOperationException($"Number {i} of the series: {(print is null ? Check.Print(value) : print(value))}\n{e.Message}", e);
            }
        }
    }

    public static void Holds<T>(this Gen<T> gen, Func<T, bool> claim, int iter = Ordinary, Func<T, string>? print = null) =>
        gen.Holds(v => Assert.True(claim(v)), iter, print);

    public static void Holds<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> claim, int iter = Ordinary) =>
        gen.Holds(v => claim(v.Item1, v.Item2), iter);

    public static void Holds<T1, T2>(this Gen<(T1, T2)> gen, Func<T1, T2, bool> claim, int iter = Ordinary) =>
        gen.Holds(v => Assert.True(claim(v.Item1, v.Item2)), iter);

    public static void Holds<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> claim, int iter = Ordinary) =>
        gen.Holds(v => claim(v.Item1, v.Item2, v.Item3), iter);

    public static void Holds<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, bool> claim, int iter = Ordinary) =>
        gen.Holds(v => Assert.True(claim(v.Item1, v.Item2, v.Item3)), iter);
}
