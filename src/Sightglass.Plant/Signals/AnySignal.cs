using System.Collections.Immutable;
using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
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

    public override Noted Note(SignalNotes notes)
    {
        Noted greatest = notes.Of(parts[0]);
        for (int i = 1; i < parts.Length; i++)
        {
            greatest = Noted.Max(notes.Of(parts[i]), greatest);
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
