using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Step;

/// <summary>What the four stages of an attempt hand on, by row, and the rates of the step under way.</summary>
internal unsafe struct Stages
{
    /// <summary>Committed amounts m.</summary>
    public Lanes* Before;

    /// <summary>Sums of flows at the committed amounts.</summary>
    public Lanes* Flows;

    /// <summary>k₁.</summary>
    public Lanes* Change1;

    /// <summary>(k₁ − k₂)/h, which the third and the fourth right side share.</summary>
    public Lanes* Carried;

    /// <summary>k₃.</summary>
    public Lanes* Change3;

    /// <summary>m₃ = m + 2k₁.</summary>
    public Lanes* Third;

    /// <summary>m₄ = m₃ + k₃.</summary>
    public Lanes* Fourth;

    /// <summary>m₄ + k₄, the amounts at the end.</summary>
    public Lanes* After;

    /// <summary>1/h.</summary>
    public Lanes* Rate;

    /// <summary>c₂₁/h.</summary>
    public Lanes* Rate21;

    /// <summary>c₄₃/h.</summary>
    public Lanes* Rate43;
}
