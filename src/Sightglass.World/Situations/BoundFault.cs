using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.World.Situations;

/// <summary>A fault of a situation with its draws.</summary>
internal sealed record BoundFault(FaultStart Fault, DrawnRange Happens, DrawnRange On, DrawnRange After, ImmutableArray<DrawnRange> Values)
{
    public double Chance => Fault.Chance;

    /// <summary>All of them; the one for the chance only where there is a choice.</summary>
    public IEnumerable<DrawnRange> Ranges => (Chance < 1 ? [Happens] : Array.Empty<DrawnRange>()).Concat([On, After]).Concat(Values);

    public DrawnFault Draw(CaseDraws draws)
    {
        ImmutableSortedDictionary<string, double> values = ImmutableSortedDictionary.Create<string, double>(StringComparer.Ordinal);
        for (int i = 0; i < Values.Length; i++)
        {
            values = values.SetItem(Fault.Values[i].Name, Values[i].Value(draws));
        }

        return new(Fault.Items[(int)On.Value(draws)], Fault.Fault, values);
    }
}
