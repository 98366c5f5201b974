using System.Collections.Immutable;
using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>The sum of signals in their order.</summary>
public sealed class SumSignal(ImmutableArray<Signal> parts) : Signal
{
    public override Lanes Evaluate(LaneBank bank)
    {
        Lanes sum = Lanes.Of(0);
        foreach (Signal part in parts)
        {
            sum += part.Evaluate(bank);
        }

        return sum;
    }

    public override Noted Note(SignalNotes notes)
    {
        Noted sum = Noted.Of(0);
        foreach (Signal part in parts)
        {
            sum += notes.Of(part);
        }

        return sum;
    }

    public override void TellReads(SignalReads reads)
    {
        foreach (Signal part in parts)
        {
            reads.Add(part);
        }
    }
}
