namespace Sightglass.Book.Kinds;

/// <summary>What part a kind plays in a network.</summary>
public enum KindRole
{
    /// <summary>Only described: in the walk and in texts, not in the physics.</summary>
    Described,

    /// <summary>Holds an amount.</summary>
    Store,

    /// <summary>Joins two stores, or two wires (<c>from</c>, <c>to</c>).</summary>
    Path,

    /// <summary>A wire: paths that conduct end at it, and it holds nothing.</summary>
    Wire,

    /// <summary>Shows a formula of the true state.</summary>
    Indication,

    /// <summary>Can be operated and acts on other items by name, such as a throttle handle or an emergency cut-off.</summary>
    Control,

    /// <summary>Tells a number of one system to items of another.</summary>
    Signal,

    /// <summary>Is there only as a fault that can be made: it does something to the items that it names while the fault is in.</summary>
    Mistake,
}
