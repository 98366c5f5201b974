using Sightglass.Basics.Numbers;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>A number that follows from the state of a bank: eight lanes at once, SI; a condition is a margin, true when ≥ 0.</summary>
public abstract class Signal
{
    public abstract Lanes Evaluate(LaneBank bank);

    /// <summary>The network whose state it comes from; −1 where slots are enough, or where it is made of other signals.</summary>
    public virtual int Network => -1;
}
