using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>(signal − threshold)·sign: a condition that holds at or above (sign 1), or at or below (sign −1), a threshold.</summary>
public sealed class MarginSignal(Signal signal, double threshold, double sign) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => Of(signal.Evaluate(bank));

    public override Noted Note(SignalNotes notes) => Of(notes.Of(signal));

    public override void TellReads(SignalReads reads) => reads.Add(signal);

    private T Of<T>(T value)
        where T : struct, IReal<T> => (value - T.Of(threshold)) * T.Of(sign);
}
