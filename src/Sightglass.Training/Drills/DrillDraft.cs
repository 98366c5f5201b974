using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;
using Sightglass.Cards.Programs;

namespace Sightglass.Training.Drills;

/// <summary>
/// The first version of a drill that starts from what was recorded, as a text that <c>check</c> accepts: who is there and what the recorder does not tell from a situation in which its card is
/// tried, what is asked from the card. What only an author can decide says so.
/// </summary>
/// <param name="Title">Of the drill.</param>
/// <param name="Recording">From which states are drawn.</param>
/// <param name="Stretch">The keys <c>from</c>, <c>to</c>, <c>every</c> with what they are to say.</param>
/// <param name="CardName">The card that solves it, by its file.</param>
/// <param name="Program">Its program.</param>
/// <param name="Like">The situation that the rest is taken from; null where the book has none for the card.</param>
public sealed record DrillDraft(string Title, Recording Recording, ImmutableArray<(string Key, string Says)> Stretch, string CardName, CardProgram Program, Situation? Like)
{
    private const string Open = "TO DECIDE";

    /// <summary>What the situation is to be called.</summary>
    public string SituationName => $"{Title}, as recorded";

    /// <summary>Where people stand when no situation says it.</summary>
    public string Somewhere { get; init; } = "";

    private Role? Trainee => Program.For.IsEmpty ? null : Program.For[0];

    /// <summary>A file of the book.</summary>
    public string Text()
    {
        StringBuilder text = new();
        Line(text, $"# A first version, made from the recording {Plain(Recording.Name)} and the card {CardName}. What says {Open} is the author's; then `drill --check` tells whether it can be used.");
        Line(text, "situations:");
        Line(text, $"  {Q(SituationName)}:");
        Line(text, $"    text: {Q($"{Open}: what has happened, for a person to read.")}");
        if (Recording.Train is { } train)
        {
            Line(text, $"    train: {Q(train)}");
        }

        if (Like is { } like)
        {
            Line(text, $"    # {Open}: people, start and faults are those of the situation {Plain(like.Name)}, without what the recording sets.");
            if (like.RoadNumbers.Length > 0)
            {
                Line(text, $"    road number: [{string.Join(", ", like.RoadNumbers.Select(Q))}]");
            }
        }

        People(text);
        Line(text, $"    states: {{ {string.Join(", ", Stretch.Prepend(("recording", Recording.Name)).Select(s => $"{s.Item1}: {Q(s.Item2)}"))} }}");
        Starts(text);
        Faults(text);
        Drill(text);
        return text.ToString();
    }

    private void People(StringBuilder text)
    {
        Line(text, "    people:");
        (string Role, IEnumerable<string> Places)[] people = Like is { People.IsEmpty: false } like
            ? [.. like.People.Select(p => (p.Role, (IEnumerable<string>)p.Places))]
            : [.. Program.For.Concat(Program.Ops.Select(o => o.Person).OfType<Role>()).Select(r => r.Name).Distinct(StringComparer.Ordinal).Select(r => (r, (IEnumerable<string>)[Somewhere]))];
        foreach ((string role, IEnumerable<string> places) in people)
        {
            Line(text, $"      - {{ role: {Q(role)}, at: [{string.Join(", ", places.Select(Q))}] }}{(Like is null ? $"   # {Open}" : "")}");
        }
    }

    private void Starts(StringBuilder text)
    {
        StartValue[] left = [.. (Like?.Start ?? []).Where(s => !Recording.Columns.Any(c => c.Sets.Contains(s.Name)))];
        Line(text, $"    start:{(left.Length == 0 ? $"   # {Open}: what the recorder does not tell, each fixed or a range" : "")}");
        foreach (StartValue value in left)
        {
            Line(text, $"      {Q(value.Name)}: {Value(value)}");
        }
    }

    private void Faults(StringBuilder text)
    {
        if (Like is null or { Faults.IsEmpty: true })
        {
            Line(text, $"    # {Open}: faults:");
            return;
        }

        Line(text, "    faults:");
        foreach (FaultStart fault in Like.Faults)
        {
            IEnumerable<string> values = fault.Values.Where(v => v.Span.Source is not null).Select(v => $", {Q(v.Name)}: {Value(v)}");
            string chance = fault.Chance < 1 ? string.Create(CultureInfo.InvariantCulture, $", chance: {fault.Chance * 100:0.######} %") : "";
            Line(text, $"      - {{ fault: {Q(fault.Fault)}, on: [{string.Join(", ", fault.Items.Select(Q))}], after: {Range(fault.AfterFrom, fault.AfterTo, UnitTable.Get("s"))}{chance}{string.Concat(values)} }}");
        }
    }

    private void Drill(StringBuilder text)
    {
        Line(text, "drills:");
        Line(text, $"  {Q(Title)}:");
        Line(text, $"    aim: {Q($"{Open}: what is to be learned or shown, in one sentence.")}");
        Line(text, $"    situation: {Q(SituationName)}");
        Line(text, $"    role: {Q(Trainee?.Name ?? Like?.People.FirstOrDefault()?.Role ?? "")}");
        Line(text, "    time limit: 2 h");
        Line(text, "    stop word: \"Hold, hold, hold\"");
        Line(text, $"    # {Open}: what the trainee could know from (`cue`), hints, questions, and which objectives matter. These are what the card is done with.");
        if (!Program.Bindings.IsEmpty)
        {
            Line(text, $"    # {Open}: the card speaks of one of several; these objectives are for {string.Join(", ", Program.Bindings.Select(b => $"{b.Variable} = {b.Word}"))} alone. Say it for each, as `(not A leaks or ...) and (not B leaks or ...)`.");
        }

        Line(text, "    objectives:");
        foreach (FactCondition part in Program.DoneWhen is FactCondition.All all ? all.Parts : Program.DoneWhen is { } one ? [one] : [])
        {
            if (Formula(part) is { } formula)
            {
                Line(text, string.Create(CultureInfo.InvariantCulture, $"      {Q(NameOf(part))}: {{ is: {Q(formula)}{(Program.StaysSoSeconds > 0 ? $", stays: {Range(Program.StaysSoSeconds, Program.StaysSoSeconds, UnitTable.Get(Program.StaysSoSeconds % 60 == 0 ? "min" : "s"))}" : "")} }}"));
            }
        }

        (string Name, string Formula)[] never = [.. Program.MustNever.Select(n => (Name: NameOf(n), Formula: Formula(n))).Where(n => n.Formula is not null).Select(n => (n.Name, n.Formula!)).DistinctBy(n => n.Name)];
        if (never.Length > 0)
        {
            Line(text, "    must never:");
            Array.ForEach(never, n => Line(text, $"      {Q(n.Name)}: {{ is: {Q(n.Formula)} }}"));
        }

        Line(text, $"    solved by: [{Q(CardName)}]");
    }

    private static string NameOf(FactCondition condition) => condition switch
    {
        FactCondition.Holds holds => holds.Fact.Name,
        FactCondition.Not not => $"not {NameOf(not.Inner)}",
        FactCondition.All all => string.Join(", ", all.Parts.Select(NameOf)),
        FactCondition.Any any => string.Join(", or ", any.Parts.Select(NameOf)),
        _ => "",
    };

    /// <summary>The condition as a formula; null where it asks for numbers that were written down, which nobody but the card knows.</summary>
    private static string? Formula(FactCondition condition) => condition switch
    {
        FactCondition.Holds holds => holds.Fact.Name,
        FactCondition.Not not => Formula(not.Inner) is { } inner ? $"not ({inner})" : null,
        FactCondition.All all => Joined(all.Parts, " and "),
        FactCondition.Any any => Joined(any.Parts, " or "),
        _ => null,
    };

    private static string? Joined(ImmutableArray<FactCondition> parts, string by) => parts.Select(Formula).ToArray() is var all && all.Contains(null) ? null : $"({string.Join(by, all)})";

    private static string Value(StartValue value) => value.OneOf switch
    {
        { IsDefaultOrEmpty: true } => Range(value.From, value.To, value.Unit!),
        [var only] => Q(only),
        var several => $"[{string.Join(", ", several.Select(Q))}]",
    };

    private static string Range(double from, double to, Unit unit)
    {
        string Number(double si) => string.Create(CultureInfo.InvariantCulture, $"{unit.FromSi(si):0.#########}{(unit.Symbol == "1" ? "" : $" {unit.Symbol}")}");
        return from == to ? Number(from) : $"{Number(from)} .. {Number(to)}";
    }

    private static string Q(string text) => RecordingLook.Quoted(text);

    private static string Plain(string text) => string.Concat(text.Where(c => !char.IsControl(c)));

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
