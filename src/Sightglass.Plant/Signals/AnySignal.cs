using System.Collections.Immutable;
using Sightglass.Basics.Numbers;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>The greatest of several margins: holds when one does.</summary>
public sealed class AnySignal(ImmutableArray<Signal> parts) : Signal
{
    public override Lanes Evaluate(LaneBank bank)
    {
        Lanes greatest = parts[0].Evaluate(bank);
        for (int i = 1; i < parts.Length; i++)
        {
            greatest = Lanes.Max(parts[i].Evaluate(bank), greatest);
        }

        return greatest;
    }

    public override void TellReads(SignalReads reads)
    {
        foreach (Signal part in parts)
        {
            reads.Add(part);
        }
    }
}
