namespace Sightglass.Network.Step;

/// <summary>
/// RODAS3: linearly implicit, four stages of which the first two share an evaluation, order 3 with an embedded order 2,
/// stiffly accurate and L-stable. Source: Sandu, Verwer, Blom, Spee, Carmichael, Potra, Atmospheric Environment 31 (1997)
/// 3459–3472, coefficients in the transformed form (from memory, checked by the order test).
/// </summary>
/// <remarks>
/// (C/(hγ) − ∂Q/∂p)·κᵢ = Q(mᵢ) + Σⱼ cᵢⱼ·kⱼ/h, kᵢ = C·κᵢ;
/// m₁ = m₂ = m, m₃ = m + 2k₁, m₄ = m₃ + k₃, new = m₄ + k₄, and k₄ is the error estimate.
/// </remarks>
internal static class Rodas3
{
    public const double Gamma = 0.5;

    /// <summary>Share of the first stage's change in the second, third and fourth right side, over h.</summary>
    public const double C21 = 4;

    public const double C31 = 1;

    public const double C32 = -1;

    public const double C41 = 1;

    public const double C42 = -1;

    public const double C43 = -8.0 / 3.0;
}
