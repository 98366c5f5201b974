namespace Sightglass.Plant.Rules;

/// <summary>What became of a row.</summary>
public enum RuleVerdict
{
    Kept,

    NotKept,

    /// <summary>Neither can be said; the finding says why.</summary>
    CannotBeTold,
}
