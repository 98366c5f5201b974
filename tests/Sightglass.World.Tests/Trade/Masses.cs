using Sightglass.Network.Compile;

namespace Sightglass.World.Tests.Trade;

/// <summary>All that is in the stores of a network and has passed its boundaries, kg.</summary>
internal static class Masses
{
    /// <summary>Amounts that are no mass of fuel or of compressed air: air in fuel lines, wants, counters, lags, and water out of moist air.</summary>
    private static readonly string[] s_noMass = ["air of ", "want of ", "turn of ", "wet of ", "delay of ", "warmth of ", "turned of ", "water of ", "clock of ", "speed lost of "];

    /// <summary>Everything, with what rounding takes from the sum added again (Neumaier); and the same without signs, as a measure of what there is and has passed.</summary>
    public static (double Sum, double Size) Of(World world, int network)
    {
        (double sum, double lost, double size) = (0, 0, 0);
        for (int i = 0; i < world.Plan.AmountNames[network].Length; i++)
        {
            string name = world.Plan.AmountNames[network][i];
            if (Array.Exists(s_noMass, p => name.StartsWith(p, StringComparison.Ordinal)))
            {
                continue;
            }

            double amount = world.GetAmount(network, new Amount(i));
            double next = sum + amount;
            lost += Math.Abs(sum) >= Math.Abs(amount) ? sum - next + amount : amount - next + sum;
            sum = next;
            size += Math.Abs(amount);
        }

        return (sum + lost, size);
    }
}
