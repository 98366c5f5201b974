using Sightglass.Basics.Language;

namespace Sightglass.Plant.Plans;

/// <summary>What a plan knows by a name (<c>pressure of main reservoir</c>, a control, the surroundings), as people read it.</summary>
public static class QuantityWords
{
    private const string Joined = " of ";

    /// <param name="name">As the plan has it.</param>
    public static string Of(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string said = Say.Word(name);
        if (said != name || name.IndexOf(Joined, StringComparison.Ordinal) is not (> 0 and var end))
        {
            return said;
        }

        string quantity = Say.Word(name[..end]);
        return quantity == name[..end] ? said : Say.With($"{quantity} of {name[(end + Joined.Length)..]}");
    }
}
