namespace Sightglass.Drawing.Ladder;

/// <summary>A part of a circuit between two wires.</summary>
/// <param name="Id">Its name in the book.</param>
/// <param name="Label">Words drawn.</param>
/// <param name="Plus">The wire on its plus side.</param>
/// <param name="Minus">The wire on its minus side.</param>
/// <param name="Symbol">How it is drawn.</param>
public sealed record LadderPart(string Id, string Label, string Plus, string Minus, LadderSymbol Symbol)
{
    /// <summary>Whether a person can operate it.</summary>
    public bool IsOperated { get; init; }

    /// <summary>Whether it gives current: a battery, a charger.</summary>
    public bool IsSource => Symbol is LadderSymbol.Battery or LadderSymbol.Charger;

    /// <summary>Whether something moves in it: it is drawn open or made.</summary>
    public bool Moves => Symbol is LadderSymbol.Contact or LadderSymbol.Breaker;
}
