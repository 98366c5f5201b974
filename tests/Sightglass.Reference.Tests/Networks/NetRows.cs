namespace Sightglass.Reference.Tests.Networks;

// The rows of a reference network, column by column as in the file. Laws and units: Data/README.md.

/// <param name="Capacity">Amount per potential: L (gas, bar) or L/m (liquid).</param>
/// <param name="Start">Potential at the start, bar absolute or m.</param>
public sealed record NodeRow(string Name, double Capacity, double Start);

public sealed record FrictionRow(int A, int B, double K, double Epsilon);

public sealed record HeadRow(int A, int B, double K, double Epsilon, double Offset, double Open);

/// <param name="P1">Opening (plain), crack pressure in bar (check), or number of the control row (controlled).</param>
/// <param name="P2">Width in bar (check) or sign of the argument (controlled).</param>
/// <param name="Tag">1 for leaks, which the baseline program varies from lane to lane.</param>
public sealed record OrificeRow(int A, int B, double C, OrificeKind Kind, double P1, double P2, int Tag);

public enum OrificeKind
{
    Plain,
    Check,
    Controlled,
}

/// <param name="C">Node that sets the target, or −1 for a fixed one.</param>
/// <param name="D">Node that is compared with it.</param>
public sealed record ControlRow(int C, int D, double C0, double C1, double Low, double High, double Delta, double Gain, double C2);

/// <param name="Z">The follower: not a store.</param>
public sealed record RelayRow(int Z, int E, int B, double Width, double Lag, double Enabled);

public sealed record SourceRow(int Node, double Flow);

/// <param name="IsOn">Where the start is between low and high.</param>
public sealed record SwitchRow(int Node, double Low, double High, bool IsOn, InputKind Kind, int Index, double WhenOn, double WhenOff);

public sealed record ScheduleRow(double Time, InputKind Kind, int Index, double Value);

/// <summary>What a switch or the schedule sets.</summary>
public enum InputKind
{
    ControlTarget,
    ControlGain,
    OrificeOpening,
    Source,
    HeadOpening,
}
