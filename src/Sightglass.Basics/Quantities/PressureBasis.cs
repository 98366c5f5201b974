namespace Sightglass.Basics.Quantities;

/// <summary>What a pressure is measured from where it is read.</summary>
public enum PressureBasis
{
    /// <summary>Not asked.</summary>
    Either,

    /// <summary>From the air around: <c>psia</c> and <c>bar abs</c> are refused.</summary>
    Gauge,

    /// <summary>From vacuum: only <c>psia</c>, <c>bar abs</c>, <c>kPa abs</c> and <c>Pa</c>.</summary>
    Absolute,
}
