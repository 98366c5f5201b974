namespace Sightglass.Cards.Programs;

/// <summary>How a reading is compared with a number.</summary>
public enum Comparison
{
    /// <summary>At least: reading ≥ value.</summary>
    AtLeast,

    /// <summary>At most: reading ≤ value.</summary>
    AtMost,

    /// <summary>More than: reading &gt; value.</summary>
    MoreThan,

    /// <summary>Less than: reading &lt; value.</summary>
    LessThan,

    /// <summary>The instrument shows this very number: the reading rounds to it at the instrument's resolution.</summary>
    Exactly,
}
