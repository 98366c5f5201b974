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
        Set(world, Rule, _positions.IsEmpty ? value : _positions[(int)value]);
    }

    /// <summary>Puts a value where its rule says: SI, or the number of a position.</summary>
    public static void Set(World world, StartRule rule, double value)
    {
        if (rule.Network < 0)
        {
            world.SetSlot(rule.Slot, value);
            return;
        }

        world.SetStartAmount(rule.Network, rule.Amount, rule.ToAmount!(value));
        foreach ((int network, Network.Compile.Amount amount, Func<double, double> toAmount) in rule.Also)
        {
            world.SetStartAmount(network, amount, toAmount(value));
        }
    }
}
