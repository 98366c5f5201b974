using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Access;

/// <summary>What is kept on the machine to be used.</summary>
public sealed class KitKind : KindBuilder
{
    private const string Missing = "missing";

    /// <summary>What is in it, divided by commas.</summary>
    private const string Keeps = "keeps";

    public override KindSheet Sheet { get; } = new()
    {
        Name = "kit",
        Purpose = "What is kept to be used: chocks, a tool locker, flags.",
        Details = """
            A card that needs something which is kept here, and nowhere else, cannot be worked while it is missing; a protection that needs the item cannot be set. What somebody has taken along before it went missing they have. Source: derived.
            """,
        Parameters = [new(Keeps, ParameterType.Text, Dimension.One, "What is in it, as cards say it under `Needs:`, divided by commas. The name of the item where nothing is written.")],
        Faults = [new(Missing, "What is kept there is not there, or no longer fit for use.", []) { Lacks = true }],
    };

    public override void Declare(PlanBuilder plan, Item item) => plan.Fault(item, Missing, ("", 1));

    /// <summary>What an item keeps, in the words of cards.</summary>
    internal static ImmutableArray<string> KeptIn(Item item) =>
        item.Text(Keeps) is { Length: > 0 } text ? [.. text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)] : [item.Name];
}
