using Sightglass.Book.Model;

namespace Sightglass.Trials.Consists;

/// <summary>What goes through a jumper or a breaker of three phases. A.</summary>
/// <param name="Item">The item.</param>
/// <param name="Amperes">The greatest of its phases.</param>
/// <param name="Rated">What it stands for ever.</param>
/// <param name="Tripped">Whether it is a breaker that has opened by itself.</param>
public sealed record CurrentReading(Item Item, double Amperes, double Rated, bool Tripped = false)
{
    public bool IsOver => Amperes > Rated;
}
