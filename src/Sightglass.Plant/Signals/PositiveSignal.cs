using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>A signal, never below zero.</summary>
public sealed class PositiveSignal(Signal signal) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => Lanes.Max(signal.Evaluate(bank), Lanes.Of(0));

    public override Noted Note(SignalNotes notes) => Noted.Max(notes.Of(signal), Noted.Of(0));

    public override void TellReads(SignalReads reads) => reads.Add(signal);
}
