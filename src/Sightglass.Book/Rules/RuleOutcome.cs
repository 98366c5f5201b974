namespace Sightglass.Book.Rules;

/// <summary>What a test makes of the quantity it follows.</summary>
public enum RuleOutcome
{
    /// <summary>First value less last, over the time between.</summary>
    AverageFall,

    /// <summary>Last value less first, over the time between.</summary>
    AverageRise,

    /// <summary>The least value.</summary>
    Least,

    /// <summary>The greatest value.</summary>
    Greatest,
}
