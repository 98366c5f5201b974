using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <summary>What an input of a resolver follows from: a function of the slots, or a margin that sees slots only, which is 1 while it holds and 0 while it does not.</summary>
internal readonly record struct ResolverInput(SlotFunction? Value, Signal? While)
{
    public double Of(LaneBank bank, int lane, ReadOnlySpan<double> slots)
    {
        double value = Value is null ? 1 : Value(slots);
        return While is null || While.Evaluate(bank)[lane] >= 0 ? value : 0;
    }
}
