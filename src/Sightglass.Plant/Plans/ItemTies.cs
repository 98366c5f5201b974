namespace Sightglass.Plant.Plans;

/// <summary>
/// What ties one item to networks and slots, noted while it is built: bindings, conditions and pulses are functions into which nobody can look, but they
/// can only read slots that were asked for while the item was built.
/// </summary>
internal sealed class ItemTies
{
    /// <summary>Networks with an input or a parameter that follows from the item's slots.</summary>
    public SortedSet<int> Steers { get; } = [];

    /// <summary>Slots that were asked for, by their indices: whatever the item reads is among them.</summary>
    public SortedSet<int> Reads { get; } = [];

    /// <summary>Slots that its switches and pulses set.</summary>
    public SortedSet<int> Sets { get; } = [];

    public List<SwitchRule> Switches { get; } = [];

    public List<Binding> Bindings { get; } = [];
}
