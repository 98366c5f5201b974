namespace Sightglass.Cards.Names;

/// <summary>How many a phrase means.</summary>
public enum Quantifier
{
    One,

    /// <summary>All of them: <c>each other compartment</c>.</summary>
    Each,

    /// <summary>At least one of them: <c>any other compartment</c>.</summary>
    Any,
}
