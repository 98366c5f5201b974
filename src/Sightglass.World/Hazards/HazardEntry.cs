using Sightglass.Book.Model;
using Sightglass.Plant.Signals;

namespace Sightglass.World.Hazards;

/// <summary>A hazard made ready to be met.</summary>
/// <param name="Number">Its place in the author's order.</param>
/// <param name="Hazard">As the book has it.</param>
/// <param name="Margin">Not negative while it bites; null: always.</param>
/// <param name="Protection">What keeps one safe from it, or null.</param>
/// <param name="Mechanism">What a card fails of.</param>
internal sealed record HazardEntry(int Number, Hazard Hazard, Signal? Margin, Protection? Protection, string Mechanism)
{
    public bool IsCritical => Hazard.IsCritical;
}
