using System.Numerics;

namespace Sightglass.Basics.Tests.Numbers;

/// <summary>Numbers with 320 binary places, to judge rounded results by. Slow and plain.</summary>
internal readonly record struct Exact(BigInteger Scaled)
{
    private const int Places = 320;

    private static readonly BigInteger s_one = BigInteger.One << Places;

    public static Exact Ln2 { get; } = new(2 * ArcTanh(new Exact(s_one / 3)).Scaled);

    /// <summary>The number itself, unrounded (down to 2⁻³²⁰).</summary>
    public static Exact Of(double x)
    {
        long bits = BitConverter.DoubleToInt64Bits(x);
        int exponent = (int)((bits >> 52) & 0x7FF);
        BigInteger fraction = (bits & 0xFFFFFFFFFFFFF) | (exponent == 0 ? 0 : 1L << 52);
        int shift = Math.Max(exponent, 1) - 1075 + Places;
        BigInteger scaled = shift >= 0 ? fraction << shift : fraction >> -shift;
        return new(bits < 0 ? -scaled : scaled);
    }

    public static Exact operator +(Exact a, Exact b) => new(a.Scaled + b.Scaled);

    public static Exact operator -(Exact a, Exact b) => new(a.Scaled - b.Scaled);

    public static Exact operator *(Exact a, Exact b) => new((a.Scaled * b.Scaled) >> Places);

    public static Exact operator /(Exact a, Exact b) => new((a.Scaled << Places) / b.Scaled);

    /// <summary>e to this power is 2ⁿ times the result, which lies in 1…2.</summary>
    public (Exact Value, int Power) Exp()
    {
        int n = (int)BigInteger.Divide(Scaled - (Scaled.Sign < 0 ? Ln2.Scaled : 0), Ln2.Scaled);
        Exact r = new(Scaled - (n * Ln2.Scaled));
        (Exact sum, Exact term) = (new(s_one), new(s_one));
        for (int i = 1; !term.Scaled.IsZero; i++)
        {
            term = new((term * r).Scaled / i);
            sum += term;
        }

        return (sum, n);
    }

    /// <summary>The logarithm of x, where x may have any exponent.</summary>
    public static Exact Log(double x)
    {
        int power = (int)Math.Floor(Math.Log2(x));
        Exact m = Of(Math.ScaleB(x, -power));
        Exact one = new(s_one);
        return new(2 * ArcTanh((m - one) / (m + one)).Scaled + (power * Ln2.Scaled));
    }

    /// <summary>(rounded·2⁻ᵖᵒʷᵉʳ − this)/this; for 0 the number itself.</summary>
    public double RelativeErrorOf(double rounded, int power = 0) => Scaled.IsZero
        ? rounded
        : (double)((Of(Math.ScaleB(rounded, -power)) - this) / this).Scaled / Math.Pow(2, Places);

    private static Exact ArcTanh(Exact s)
    {
        Exact square = s * s;
        (Exact sum, Exact term) = (s, s);
        for (int i = 3; !term.Scaled.IsZero && term.Scaled != BigInteger.MinusOne; i += 2)
        {
            term *= square;
            sum += new Exact(term.Scaled / i);
        }

        return sum;
    }
}
