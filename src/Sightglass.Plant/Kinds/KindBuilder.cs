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

    /// <summary>Names of stores that an item joins beyond those that it names itself.</summary>
    public virtual IEnumerable<string> AlsoJoins(ClassBook book, Item item) => [];

    /// <summary>Items of the same circuit beyond those that its ends name: the coil of a contact.</summary>
    public virtual IEnumerable<Item> ActsWith(ClassBook book, Item item) => [];

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
