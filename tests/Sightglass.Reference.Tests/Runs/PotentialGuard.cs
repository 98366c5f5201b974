using Sightglass.Basics.Numbers;
using Sightglass.Network.Compile;
using Sightglass.Network.Groups;

namespace Sightglass.Reference.Tests.Runs;

/// <summary>Not negative where a potential has reached a limit from below (sign 1) or from above (sign −1).</summary>
internal sealed class PotentialGuard(Amount amount, double limit, double sign) : Guard
{
    public override Lanes Evaluate(in StateView state) => Lanes.Of(sign) * (state.PotentialOf(amount) - Lanes.Of(limit));
}
