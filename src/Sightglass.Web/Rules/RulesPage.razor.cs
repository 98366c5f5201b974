using System.Collections.Immutable;
using Microsoft.AspNetCore.Components;
using Sightglass.Basics.Language;
using Sightglass.Book.Rules;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Rules;
using Sightglass.Web.Live;

namespace Sightglass.Web.Rules;

/// <summary>Published limits, held against the machine that is served; one of them in full.</summary>
public sealed partial class RulesPage
{
    [Inject]
    private MachineRoom Room { get; set; } = null!;

    [Inject]
    private RuleShelf Shelf { get; set; } = null!;

    /// <summary>Language of the rules' own words: a reading of a rule in another one would be another rule.</summary>
    private const string RulesIn = "en";

    /// <summary>The paragraph shown in full.</summary>
    [SupplyParameterFromQuery(Name = "show")]
    private string? Show { get; set; }

    private ImmutableArray<HeldSet> Held { get; set; } = [];

    private RuleFinding? Shown { get; set; }

    private string Sentence { get; set; } = "";

    protected override void OnInitialized()
    {
        Plan plan = Room.Shelf.PlanOf(Room.Session.Start.RoadNumber);
        Held = [.. Shelf.Sets.Select(s => HeldSet.Of(s, RuleCheck.Of(RuleBinding.Of(s, plan, []))))];
        Sentence = SentenceOf($"{plan.Book.Title} {plan.Book.RoadNumberInUse}".TrimEnd());
    }

    protected override void OnParametersSet()
    {
        RuleFinding[] all = [.. Held.SelectMany(h => h.Groups).SelectMany(g => g.Findings)];
        Shown = Array.Find(all, f => f.Row.Paragraph == Show) ?? all.FirstOrDefault();
    }

    private string SentenceOf(string machine)
    {
        int kept = Held.Sum(h => h.Count(RuleVerdict.Kept));
        int broken = Held.Sum(h => h.Count(RuleVerdict.NotKept));
        int untold = Held.Sum(h => h.Count(RuleVerdict.CannotBeTold));
        return kept + broken + untold == 0
            ? ""
            : broken > 0 ? Say.With($"{machine} keeps {kept} of {kept + broken + untold} limits that a machine can keep and breaks {broken}; {untold} cannot be told from its book alone.")
            : Say.With($"{machine} keeps {kept} of {kept + broken + untold} limits that a machine can keep; {untold} cannot be told from its book alone.");
    }

    private static string LinkTo(RuleFinding f) => $"rules?show={Uri.EscapeDataString(f.Row.Paragraph)}";

    private static string MarkOf(RuleFinding f) => f.Verdict switch { RuleVerdict.Kept => "✓", RuleVerdict.NotKept => "✕", _ => "–" };

    private static string WordOf(RuleFinding f) => f.Verdict switch { RuleVerdict.Kept => Say.It("kept"), RuleVerdict.NotKept => Say.It("not kept"), _ => Say.It("cannot be told") };

    private static string Told(RuleFinding f) => f.Verdict == RuleVerdict.CannotBeTold
        ? $". {f.Why}"
        : string.Join(", ", new[] { RuleWords.Value(f), RuleWords.Limits(f) }.Where(t => t.Length > 0)) is { Length: > 0 } told ? $": {told}." : ".";

    private static IEnumerable<(string Name, string Text)> PartsOf(RuleRow row) => new[]
    {
        (Say.It("Condition"), row.Condition), (Say.It("Method"), row.Method), (Say.It("Our reading"), row.Reading), (Say.It("Edition"), row.Edition), (Say.It("Confidence"), RuleWords.Confidence(row.Confidence)),
    }.Where(p => p.Item2.Length > 0);
}
