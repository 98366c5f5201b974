using System.Globalization;
using Sightglass.Basics.Language;
using Sightglass.Training.Evaluation;
using Sightglass.Web.Room;

namespace Sightglass.Web.Debrief;

/// <summary>Says how far assessors agree who each marked a drill for themselves; always of how many.</summary>
internal static class AgreementWords
{
    /// <summary>Below so many lines figures say little.</summary>
    private const int Few = 30;

    /// <summary>A sentence for each two assessors of a drill.</summary>
    public static IEnumerable<string> Of(RoomDrill drill) =>
        from first in drill.Marks
        from second in drill.Marks
        where string.CompareOrdinal(first.Key, second.Key) < 0
        let agreement = Between(drill, first.Key, second.Key)
        where agreement.Of > 0
        select Said(first.Key, second.Key, agreement);

    /// <summary>How far two assessors agree over many drills together; null where they judged nothing both.</summary>
    public static string? Over(IEnumerable<RoomDrill> drills, string first, string second)
    {
        Agreement sum = drills.Aggregate(default(Agreement), (s, d) => s + Between(d, first, second));
        return sum.Of == 0 ? null : Say.With($"Over all drills of this room: {Figures(sum)}");
    }

    /// <summary>Lines that both judged go or no go; what either did not see is left out.</summary>
    public static Agreement Between(RoomDrill drill, string first, string second)
    {
        var one = drill.Marks.GetValueOrDefault(first);
        var other = drill.Marks.GetValueOrDefault(second);
        return one is null || other is null
            ? default
            : Agreement.Over(one.Where(m => m.Value != Verdict.NotSeen && other.GetValueOrDefault(m.Key) != Verdict.NotSeen).Select(m => (m.Value == Verdict.Go, other[m.Key] == Verdict.Go)));
    }

    private static string Said(string first, string second, Agreement agreement) => Say.With($"{first} and {second}: {Figures(agreement)}");

    private static string Figures(Agreement a)
    {
        string alike = Say.Of(a.Of, $"alike in {a.Alike} of {a.Of} line.", $"alike in {a.Alike} of {a.Of} lines.");
        string beyond = Say.With($"Beyond chance: Gwet's AC1 {Number(a.Ac1)}, Cohen's kappa {Number(a.Kappa)}.");
        return a.Of < Few ? $"{alike} {beyond} {Say.With($"Figures of fewer than {Few} lines say little.")}" : $"{alike} {beyond}";
    }

    private static string Number(double value) => double.IsNaN(value) ? "–" : value.ToString("0.00", CultureInfo.InvariantCulture).Replace('-', '−');
}
