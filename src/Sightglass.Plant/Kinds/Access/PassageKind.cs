using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Access;

/// <summary>What people go by from one place to another.</summary>
public sealed class PassageKind : KindBuilder
{
    private const string Shut = "cannot be used";

    public override KindSheet Sheet { get; } = new()
    {
        Name = "passage",
        Purpose = "What people go by: steps, a ladder, a hatch, a way out.",
        Details = """
            A leg that says `through` it is shut while it cannot be used. Who comes to it finds that out there and takes the shortest other way, or stays where there is none. Source: derived, by the ways of the book (Dijkstra's algorithm).
            """,
        Faults = [new(Shut, "Nobody gets by it: broken, blocked, under ice, or closed by a tag.", []) { Bars = true }],
    };

    public override void Declare(PlanBuilder plan, Item item) => plan.Fault(item, Shut, ("", 1));
}
