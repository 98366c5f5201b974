using System.Collections.Immutable;
using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>The least of several margins: holds when all do.</summary>
public sealed class AllSignal(ImmutableArray<Signal> parts) : Signal
{
    public override Lanes Evaluate(LaneBank bank)
    {
        Lanes least = parts[0].Evaluate(bank);
        for (int i = 1; i < parts.Length; i++)
        {
            least = Lanes.Min(parts[i].Evaluate(bank), least);
        }

        return least;
    }

    public override Noted Note(SignalNotes notes)
    {
        Noted least = notes.Of(parts[0]);
        for (int i = 1; i < parts.Length; i++)
        {
            least = Noted.Min(notes.Of(parts[i]), least);
        }

        return least;
    }

    public override void TellReads(SignalReads reads)
    {
        foreach (Signal part in parts)
        {
            reads.Add(part);
        }
    }
}
