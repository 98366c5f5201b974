using System.Collections.Immutable;
using Sightglass.Basics.Language;

namespace Sightglass.Drawing.Charts;

/// <summary>What a trace gauge says beside its scale.</summary>
/// <param name="Number">The large number, without its unit; empty where there is none.</param>
/// <param name="IsTruth">Whether the number is hidden truth.</param>
/// <param name="Below">Lines below it, and whether each is truth.</param>
/// <param name="Misleads">By how much it misleads, in words; empty where it does not.</param>
/// <param name="Said">Everything for people who cannot see it.</param>
internal sealed record TraceGaugeWords(string Number, bool IsTruth, ImmutableArray<(string Words, bool IsTruth)> Below, string Misleads, string Said)
{
    public static TraceGaugeWords Of(TraceGauge gauge)
    {
        string Text(double value) => ChartNumber.Text(value, gauge.Decimals);
        string InUnit(double value) => $"{Text(value)} {gauge.Unit}".TrimEnd();
        double? reading = gauge.Reading.IsEmpty ? null : gauge.Step > 0 ? Math.Round(gauge.Reading[^1].Y / gauge.Step, MidpointRounding.AwayFromZero) * gauge.Step : gauge.Reading[^1].Y;
        double? truth = gauge.Truth.IsEmpty ? null : gauge.Truth[^1].Y;
        if (reading is not { } shown)
        {
            return truth is { } hidden ? new(Text(hidden), true, [(Say.It("truth"), true)], "", Say.With($"{gauge.Title}: truth {InUnit(hidden)}")) : new("–", false, [], "", gauge.Title);
        }

        double apart = truth is { } real ? Math.Abs(shown - real) : 0;
        string misleads = gauge.Misleading is { } bound && truth is not null && apart >= bound ? Say.With($"misleads by {Text(apart)}") : "";
        List<(string Words, bool IsTruth)> below = [];
        if (truth is { } other && (misleads.Length > 0 || apart > gauge.Step) && Text(shown) != Text(other))
        {
            below.Add((Say.With($"truth {InUnit(other)}"), true));
        }

        if (misleads.Length > 0)
        {
            below.Add((misleads, false));
        }

        if (gauge.TruthNote.Length > 0)
        {
            below.Add((gauge.TruthNote, true));
        }

        return new(Text(shown), false, [.. below], misleads, string.Join(", ", below.Select(b => b.Words).Prepend($"{gauge.Title}: {InUnit(shown)}")));
    }
}
