using Sightglass.Basics.Numbers;
using Sightglass.Network.Compile;
using Sightglass.Network.Groups;

namespace Sightglass.Network.Tests.Groups;

/// <summary>Not negative when the mass of a store has fallen to a level (sign −1) or risen to it (+1).</summary>
internal sealed class LevelGuard(Amount amount, double level, double sign) : Guard
{
    public override Lanes Evaluate(in StateView state) => (state.AmountOf(amount) - Lanes.Of(level)) * Lanes.Of(sign);
}
