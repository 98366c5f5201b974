using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds;

/// <summary>A kind of equipment: its sheet, and how items of it are built into a plan.</summary>
public abstract class KindBuilder
{
    public abstract KindSheet Sheet { get; }

    /// <summary>What it holds, of a store.</summary>
    public virtual Fluid? Holds => null;

    /// <summary>Whether its ends are thermal masses and not stores of what flows.</summary>
    public virtual bool PassesHeat => false;

    /// <summary>Names of stores that an item joins beyond those that it names itself.</summary>
    public virtual IEnumerable<string> AlsoJoins(ClassBook book, Item item) => [];

    /// <summary>What an item presses with on what it lies on, kg, from the slots; null for what has no weight that counts.</summary>
    public virtual SlotFunction? Weighs(PlanBuilder plan, Item item) => null;

    /// <summary>Wires, or masses on springs, by name, that are worked out together because of an item: a set for each circuit that it lies in.</summary>
    public virtual IEnumerable<IEnumerable<string>> JoinsWires(ClassBook book, Item item) => item.Kind.Conducts ? [EndsOf(item)] : [];

    /// <summary>The items at which an item ends.</summary>
    protected static IEnumerable<string> EndsOf(Item item) => new[] { item.From, item.To }.Where(e => e is { IsItem: true }).Select(e => e!.Item);

    /// <summary>First pass: stores and slots, so that paths find their ends whatever the order of names.</summary>
    public virtual void Declare(PlanBuilder plan, Item item)
    {
    }

    /// <summary>Second pass: paths, signals, bindings, rules.</summary>
    public virtual void Connect(PlanBuilder plan, Item item)
    {
    }

    /// <summary>Third pass: indications, whose formulas need every name.</summary>
    public virtual void Indicate(PlanBuilder plan, Item item)
    {
    }
}
