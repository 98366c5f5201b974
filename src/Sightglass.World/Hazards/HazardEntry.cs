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
    /// <summary>
    /// Whether it injures who meets it: what needs a protection, and what is told as a danger or a warning. A caution or a notice alone is
    /// told, and it is for the person to heed it.
    /// </summary>
    public bool IsCritical => Protection is not null || Hazard.Caution.Word is SignalWord.Danger or SignalWord.Warning;
}
