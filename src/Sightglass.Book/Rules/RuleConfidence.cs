namespace Sightglass.Book.Rules;

/// <summary>How sure it is that a row says what its paragraph says today.</summary>
public enum RuleConfidence
{
    /// <summary>Read in the edition named; no later change of the number was found.</summary>
    High,

    /// <summary>Read, but a later change is possible, or the row holds a reading of its own.</summary>
    Medium,
}
