using Sightglass.Cli.Rules;
using Sightglass.Plant.Rules;

namespace Sightglass.Cli.Output;

/// <summary>What <c>rules --json</c> answers. Hash and steps are those of the run in which tests were measured.</summary>
internal sealed record RulesAnswer(
    string Book, string? RoadNumber, string? Situation, ulong? Seed, ulong? Case, long? Steps, string? Hash, string? Trouble, string Build, string Decide, IReadOnlyList<RulesAnswer.SetRow> Sets)
{
    public static RulesAnswer Of(RuleResult r) => new(
        r.Book,
        r.RoadNumber,
        r.Run?.Request.StartName,
        r.Run?.Request.Seed,
        r.Run?.Request.Case,
        r.Run?.Steps,
        r.Run?.Hash.ToString("x16", System.Globalization.CultureInfo.InvariantCulture),
        r.Run?.Trouble,
        BuildName.Text,
        RuleWords.Decide,
        [.. r.Sets.Select(s => new SetRow(s.Rules.Title, s.Rules.Edition, s.Count(RuleVerdict.Kept), s.Count(RuleVerdict.NotKept), s.Count(RuleVerdict.CannotBeTold), [.. s.Findings.Select(Row.Of)]))]);

    /// <param name="CannotBeTold">Of the rows that a machine keeps or not.</param>
    internal sealed record SetRow(string Title, string Edition, int Kept, int NotKept, int CannotBeTold, IReadOnlyList<Row> Rows);

    /// <param name="Verdict">kept, not kept, cannot be told.</param>
    /// <param name="OfTheMachine">Whether a machine can keep it; otherwise it is about what people do.</param>
    /// <param name="Value">In <paramref name="Unit"/>, as the limits.</param>
    internal sealed record Row(
        string Paragraph, string Edition, string Title, string Limit, string Condition, string Method, string OurReading, string Confidence, bool OfTheMachine,
        string Verdict, string Unit, double? Value, double? AtLeast, double? AtMost, string Why)
    {
        public static Row Of(RuleFinding f) => new(
            f.Row.Paragraph, f.Row.Edition, f.Row.Title, f.Row.Limit, f.Row.Condition, f.Row.Method, f.Row.Reading, f.Row.Confidence.ToString().ToLowerInvariant(), f.Row.IsOfTheMachine,
            f.Verdict switch { RuleVerdict.Kept => "kept", RuleVerdict.NotKept => "not kept", _ => "cannot be told" },
            f.Row.Unit.Symbol, In(f, f.Value), In(f, f.AtLeast), In(f, f.AtMost), f.Why);

        private static double? In(RuleFinding f, double? si) => si is { } value ? f.Row.Unit.FromSi(value) : null;
    }
}
