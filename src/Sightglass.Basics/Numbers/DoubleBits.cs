namespace Sightglass.Basics.Numbers;

/// <summary>Patterns of 64-bit floating-point numbers (IEEE 754 binary64) used to take them apart.</summary>
internal static class DoubleBits
{
    /// <summary>Bits of the fraction; the exponent stands above them.</summary>
    public const int FractionWidth = 52;

    public const ulong FractionMask = (1UL << FractionWidth) - 1;

    /// <summary>The number 1.</summary>
    public const ulong OneBits = 0x3FF0_0000_0000_0000;

    /// <summary>The number 2⁵², whose last bit counts ones: a whole number below 2⁵² put into its fraction is added to it.</summary>
    public const ulong TwoTo52Bits = 0x4330_0000_0000_0000;

    public const double TwoTo52PlusBias = 4503599627370496.0 + 1023;

    /// <summary>1.5·2⁵²: a whole number added to it stands in the last bits, in two's complement.</summary>
    public const double RoundingShift = 6755399441055744.0;

    /// <summary>Upper half of 2/3 of the exponent's bias with the fraction that makes the error of the seed smallest.</summary>
    public const ulong CbrtOffset = 0x2A9F7893;

    /// <summary>All ones: a mask that is true.</summary>
    public static double Ones => BitConverter.Int64BitsToDouble(-1L);
}
