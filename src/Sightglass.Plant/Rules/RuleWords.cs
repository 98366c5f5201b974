using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Basics.Time;
using Sightglass.Book.Rules;

namespace Sightglass.Plant.Rules;

/// <summary>Sentences about rows. Why something came out so is kept with the finding, unsaid.</summary>
public static class RuleWords
{
    /// <summary>Said wherever a verdict is shown.</summary>
    public static string Decide => Say.It("Local rules, the maker's manual and qualified people decide.");

    /// <summary>How sure a row is, in words.</summary>
    public static string Confidence(RuleConfidence confidence) => confidence == RuleConfidence.High
        ? Say.It("high: read in this edition; no later change of the number is known")
        : Say.It("medium: read in this edition; a later change is possible, or the row holds a reading");

    /// <summary>The number of the book or of the run; empty where there is none.</summary>
    public static string Value(RuleFinding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return finding.Value is { } v ? QuantityFormat.Text(v, finding.Row.Unit) : "";
    }

    /// <summary>The limits as they come out for this machine: <c>at least 135 psi, at most 145 psi</c>; empty where there are none.</summary>
    public static string Limits(RuleFinding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        Unit unit = finding.Row.Unit;
        return (finding.AtLeast, finding.AtMost) switch
        {
            ({ } least, { } most) => Say.With($"at least {QuantityFormat.Text(least, unit)}, at most {QuantityFormat.Text(most, unit)}"),
            ({ } least, null) => Say.With($"at least {QuantityFormat.Text(least, unit)}"),
            (null, { } most) => Say.With($"at most {QuantityFormat.Text(most, unit)}"),
            _ => "",
        };
    }

    internal static FormattableString OfPeople => $"It gives no number that a book holds: people judge it.";

    internal static FormattableString NoNumber => $"What the book gives does not come to a number.";

    internal static FormattableString Unmapped(IEnumerable<string> names) => $"Not among the book's measures: {string.Join(", ", names)}.";

    internal static FormattableString NeedsRun(IEnumerable<string> names) => $"Measured in a run, because it changes as the machine runs: {string.Join(", ", names)}.";

    internal static FormattableString NeverBegan => $"In this run the test never began.";

    internal static FormattableString Spoilt(SimTime at) => $"The test that began at {Clock(at)} was spoilt before its end: its method was not kept.";

    internal static FormattableString CutShort(SimTime at, double seconds) => $"The run ended before the test that began at {Clock(at)}; it needs {QuantityFormat.Text(seconds, UnitTable.Get("s"))}.";

    internal static FormattableString Measured(SimTime from, SimTime to) => $"Measured from {Clock(from)} to {Clock(to)}.";

    internal static FormattableString Held(SimTime from, SimTime to) => $"Held at every moment from {Clock(from)} to {Clock(to)}.";

    internal static FormattableString At(SimTime at) => $"As it stood at {Clock(at)}.";

    private static string Clock(SimTime t)
    {
        long s = (long)Math.Round(t.Seconds);
        return FormattableString.Invariant($"{s / 3600}:{s / 60 % 60:00}:{s % 60:00}");
    }
}
