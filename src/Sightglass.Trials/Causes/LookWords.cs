using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Cards.Story;

namespace Sightglass.Trials.Causes;

/// <summary>What a look asks and what may be answered, in words.</summary>
public static class LookWords
{
    /// <summary>What may be answered: of a lamp lit and dark, of a sign yes and no, of a reading less, the usual and more; of a control first where it belongs.</summary>
    public static ImmutableArray<LookAnswer> Answers(CauseTable table, int look)
    {
        ArgumentNullException.ThrowIfNull(table);
        int[] order = table.Looks[look].Kind switch { LookKind.Reading => [-1, 0, 1], LookKind.Position => [0, -1, 1], _ => [1, 0, -1] };
        return [.. order.Where(o => o == 0 || table.CanShow(look, o)).Select(o => new LookAnswer(o, Of(table, look, o)))];
    }

    /// <summary>What a look shows, in words.</summary>
    /// <param name="table">Of the search.</param>
    /// <param name="look">Its number.</param>
    /// <param name="shows">−1, 0, 1 for lower than usual, as usual, higher.</param>
    public static string Of(CauseTable table, int look, int shows)
    {
        ArgumentNullException.ThrowIfNull(table);
        (double least, double most) = table.Usual[look];
        Look of = table.Looks[look];
        return of.Kind switch
        {
            LookKind.Lamp => (shows == 0 ? least > 0.5 : shows > 0) ? Say.It("lit") : Say.It("dark"),
            LookKind.Sign => (shows == 0 ? least > 0.5 : shows > 0) ? Say.It("yes") : Say.It("no"),
            LookKind.Position => Position(of.Item!, least, most, shows),
            _ => Reading(of.Item!.Reading!, least, most, shows),
        };
    }

    /// <summary>What is otherwise: <c>load lamp: dark instead of lit</c>.</summary>
    internal static string Changed(Look look, double was, double now) => look.Kind == LookKind.Sign
        ? now > 0.5 ? Say.With($"now: {look.Name}") : Say.With($"no longer: {look.Name}")
        : Say.With($"{look.Name}: {Value(look, now)} instead of {Value(look, was)}");

    private static string Value(Look look, double value) => look.Kind switch
    {
        LookKind.Lamp => value > 0.5 ? Say.It("lit") : Say.It("dark"),
        LookKind.Position => new PositionWord(look.Name, look.Item!.Positions[(int)value]).ToString(),
        _ => QuantityFormat.Text(value, look.Item!.Reading!.Unit, look.Item.Reading.Resolution),
    };

    private static string Position(Item item, double least, double most, int shows)
    {
        string[] there = [.. item.Positions.Where((_, i) => shows == 0 ? i >= least && i <= most : shows < 0 ? i < least : i > most).Select(p => new PositionWord(item.Name, p).ToString())];
        return string.Join(" / ", there);
    }

    private static string Reading(Reading reading, double least, double most, int shows)
    {
        string from = QuantityFormat.Number(least, reading.Unit, reading.Resolution), to = QuantityFormat.Text(most, reading.Unit, reading.Resolution);
        return shows < 0 ? Say.It("less") : shows > 0 ? Say.It("more") : from == QuantityFormat.Number(most, reading.Unit, reading.Resolution) ? Say.With($"about {to}") : Say.With($"{from} to {to}");
    }
}
