using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Groups;

/// <summary>
/// A number that is negative while a condition does not hold and not negative when it does. A <i>switch</i> shortens steps so
/// that they end on its crossing; a <i>sentinel</i> is only checked and located.
/// </summary>
public abstract class Guard
{
    public abstract Lanes Evaluate(in StateView state);
}
