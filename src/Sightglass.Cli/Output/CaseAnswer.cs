using System.Globalization;
using Sightglass.Cli.Tries;
using Sightglass.Trials.Sweep;
using Sightglass.Trials.Tries;

namespace Sightglass.Cli.Output;

/// <summary>One case in JSON.</summary>
internal sealed record CaseAnswer(
    string Card, string Situation, string? RoadNumber, ulong Seed, int Case, string Outcome, string Mechanism, int Step, double EndS, string Hash, IReadOnlyList<ValueRow> Values, IReadOnlyList<RunAnswer.StoryRow> Story)
{
    public static CaseAnswer Of(TryRequest request, ulong seed, int number, CaseStory story) => new(
        request.Card.Title,
        request.Setup.Situation.Name,
        story.Number,
        seed,
        number,
        story.Outcome.Kind.ToString().ToLowerInvariant(),
        story.Outcome.Mechanism,
        story.Outcome.Step,
        story.Outcome.Time.Seconds,
        story.Outcome.Hash.ToString("x16", CultureInfo.InvariantCulture),
        [.. story.Values.Select(v => new ValueRow(v.Name, v.Value))],
        [.. story.Journal.Select(RunAnswer.StoryRow.Of)]);
}
