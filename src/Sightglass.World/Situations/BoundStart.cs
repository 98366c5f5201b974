using System.Collections.Immutable;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Situations;

/// <summary>A starting value of a situation with its draw; words are settled to the slot's numbers beforehand.</summary>
internal sealed record BoundStart(StartRule Rule, DrawnRange Range)
{
    private readonly ImmutableArray<int> _positions = [.. Range.Words.Select(w => Rule.Choices.IndexOf(w))];

    public void Draw(World world, CaseDraws draws)
    {
        double value = Range.Value(draws);
        if (Rule.Network >= 0)
        {
            world.SetStartAmount(Rule.Network, Rule.Amount, Rule.ToAmount!(value));
            foreach ((int network, Network.Compile.Amount amount, Func<double, double> toAmount) in Rule.Also)
            {
                world.SetStartAmount(network, amount, toAmount(value));
            }
        }
        else
        {
            world.SetSlot(Rule.Slot, _positions.IsEmpty ? value : _positions[(int)value]);
        }
    }
}
