using System.Globalization;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.ThreePhase;

/// <summary>Which pins of two receptacles a jumper brings together.</summary>
internal static class PinPairs
{
    /// <summary>Ω of a pin in its socket (common practice, no source).</summary>
    public const double Ohms = 5e-3;

    /// <summary>The wires of a receptacle by the numbers of its pins, in the order of the book; what is no wire is left away.</summary>
    public static IEnumerable<(int Pin, Item Wire)> WiresOf(ClassBook book, Item receptacle) =>
        receptacle.Parameters.GetValueOrDefault(ReceptacleKind.Pins) is { } pins
            ? pins.Pins.Zip(pins.Names).Select(p => (p.First, Wire: book.Items.GetValueOrDefault(p.Second))).Where(p => p.Wire?.Kind.Role == KindRole.Wire).Select(p => (p.First, p.Wire!))
            : [];

    /// <summary>Wires of the first receptacle with those of the second at which the jumper's wires end, single with single and busbar with busbar.</summary>
    public static IEnumerable<PinPair> Of(ClassBook book, Item first, Item second, IReadOnlyDictionary<int, int> crosses)
    {
        Dictionary<int, Item> far = WiresOf(book, second).ToDictionary(p => p.Pin, p => p.Wire);
        foreach ((int pin, Item wire) in WiresOf(book, first))
        {
            int other = crosses.GetValueOrDefault(pin, pin);
            if (far.TryGetValue(other, out Item? end) && end.Kind.Alternates == wire.Kind.Alternates)
            {
                yield return new(pin, wire.Name, other, end.Name, wire.Kind.Alternates);
            }
        }
    }

    /// <summary>Pins that change places in the jumper, each to the other; what cannot be read is told once, by the receptacle itself.</summary>
    public static IReadOnlyDictionary<int, int> CrossesOf(Item receptacle) => Read(receptacle) ?? [];

    /// <summary>As <see cref="CrossesOf(Item)"/>, with an error for what cannot be read.</summary>
    public static IReadOnlyDictionary<int, int> CrossesOf(PlanBuilder plan, Item receptacle)
    {
        Dictionary<int, int>? crosses = Read(receptacle);
        if (crosses is null)
        {
            ParameterValue value = receptacle.Parameters[ReceptacleKind.Crosses];
            plan.Found.Error("P042", value.Span, $"`{value.Text}` does not say which pins of `{receptacle.Name}` change places", "write pairs of pins, each once: `5 with 6, 8 with 9`");
        }

        return crosses ?? [];
    }

    private static Dictionary<int, int>? Read(Item receptacle)
    {
        Dictionary<int, int> crosses = [];
        foreach (string pair in receptacle.Parameters.GetValueOrDefault(ReceptacleKind.Crosses)?.Text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) ?? [])
        {
            if (pair.Split(" with ", StringSplitOptions.TrimEntries) is not [var one, var other] || !Number(one, out int a) || !Number(other, out int b) || a == b || !crosses.TryAdd(a, b) || !crosses.TryAdd(b, a))
            {
                return null;
            }
        }

        return crosses;
    }

    private static bool Number(string text, out int number) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number);
}
