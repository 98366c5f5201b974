using Sightglass.Basics.Numbers;
using Sightglass.Network.Compile;

namespace Sightglass.Network.Groups;

/// <summary>
/// A look at the eight states of a group: at the committed ones, or at those at the end of the last attempt.
/// Valid until the group's next iteration.
/// </summary>
public readonly unsafe struct StateView
{
    private readonly LaneGroup _group;
    private readonly Lanes* _amounts;
    private readonly Lanes* _potentials;

    internal StateView(LaneGroup group, Lanes* amounts, Lanes* potentials)
    {
        _group = group;
        _amounts = amounts;
        _potentials = potentials;
    }

    /// <summary>kg, J, …</summary>
    public Lanes AmountOf(Amount amount) => _amounts[_group.Topology.RowOf[amount.Index]];

    /// <summary>Pa absolute, K, …</summary>
    public Lanes PotentialOf(Amount amount) => _potentials[_group.Topology.RowOf[amount.Index]];

    public Lanes InputOf(Input input) => _group.InputLanes(input.Index);

    public Lanes ParameterOf(int parameter) => _group.ParameterLanes(parameter);

    /// <summary>The first flow of a path at these states, amount per second.</summary>
    public Lanes FlowOf(PathHandle path) => _group.FlowOf(path.Index, _amounts, _potentials);
}
