namespace Sightglass.Book.Model;

/// <summary>One habit of the hand or the eye.</summary>
/// <param name="Item">Here.</param>
/// <param name="Was">What it was there.</param>
/// <param name="Here">What it is here.</param>
/// <param name="Hurts">What the old habit does here; empty where it does no harm.</param>
public sealed record HabitLine(string Item, string Was, string Here, string Hurts);
