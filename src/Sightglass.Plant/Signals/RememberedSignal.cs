using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>
/// A signal that is asked for by one lane after the other, though each answer holds for all eight: works it out once and tells it again until something in the bank
/// changes. For one thread; what it is made of must come from the bank alone.
/// </summary>
public sealed class RememberedSignal(Signal signal) : Signal
{
    private LaneBank? _bank;
    private long _version;
    private Lanes _value;

    public override Lanes Evaluate(LaneBank bank)
    {
        ArgumentNullException.ThrowIfNull(bank);
        long version = bank.Version;
        if (version != _version || bank != _bank)
        {
            (_bank, _version, _value) = (bank, version, signal.Evaluate(bank));
        }

        return _value;
    }

    public override Noted Note(SignalNotes notes) => notes.Of(signal);

    public override void TellReads(SignalReads reads) => reads.Add(signal);
}
