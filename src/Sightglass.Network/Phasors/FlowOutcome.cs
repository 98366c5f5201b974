namespace Sightglass.Network.Phasors;

/// <summary>How a load flow ended. Where it did not settle there is no answer: every voltage that is not given and every current is 0.</summary>
public enum FlowOutcome
{
    Settled,

    /// <summary>The loads ask for more than the lines can carry at any voltage: their voltage finds no rest. Source: the nose of the P-V curve (any text of power flow).</summary>
    Collapsed,

    /// <summary>Not at rest within the bound, though nearing it: at the very nose. Or reactances that cancel and leave no pivot.</summary>
    NotSettled,
}
