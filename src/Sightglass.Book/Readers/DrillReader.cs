using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads drills. Formulas and what they name are looked for where they are bound to a plant, because a train has names of its own.</summary>
internal static class DrillReader
{
    private const string Practice = "practice";
    private const string Qualifying = "qualifying";

    private static readonly ImmutableArray<(string Word, DrillLevel Level)> s_levels =
        [("working", DrillLevel.Working), ("first day", DrillLevel.FirstDay), (Qualifying, DrillLevel.Qualifying)];

    public static Drill? Read(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the drill `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("aim", "Find which compartment leaks and keep the engine running.") & map.Required("situation", "SITUATION") & map.Required("role", "ROLE")
            & map.Required("objectives", "{ the engine runs: { is: FORMULA } }");
        YamlScalar? situation = map.Scalar("situation");
        string level = map.Choice("level", [.. s_levels.Select(l => l.Word)]);
        bool counts = map.Choice("use", Practice, Qualifying) == Qualifying;
        (FormulaText? cue, ImmutableArray<string> known) = Cue(map, context);
        Drill drill = new(entry.Name, entry.Key.Span)
        {
            Aim = map.Text("aim"),
            Level = s_levels.First(l => l.Word == level).Level,
            IsQualifying = counts,
            Situation = situation?.Value ?? "",
            SituationSpan = situation?.Span ?? default,
            RoleSpan = map.SpanOf("role"),
            Role = map.Name("role", NameUse.Role) ?? "",
            TimeLimit = map.Positive("time limit", Dimension.Second, 3600),
            StopWord = map.Text("stop word"),
            NotReal = [.. map.List("not real").Select(n => n.Value.Trim())],
            Tools = [.. map.List("tools").Select(n => n.Value.Trim())],
            WithCards = map.YesNo("with cards", true),
            Cue = cue,
            KnownFrom = known,
            KnownFromSpan = map.SpanOf("cue"),
            Events = [.. map.Elements("events").Select(n => DrillEventReader.Read(n, context)).OfType<DrillEvent>()],
            Objectives = [.. map.Entries("objectives").Select(e => Objective(e, context)).OfType<DrillObjective>()],
            Reports = [.. map.Entries("reports").Select(e => Report(e, context)).OfType<DrillReport>()],
            MustNever = [.. map.Entries("must never").Select(e => Never(e, context)).OfType<DrillNever>()],
            Orders = [.. map.Entries("order").Select(e => Order(e, context)).OfType<DrillOrder>()],
            PassesFrom = map.Share("passes from", 0.8),
            Hints = [.. map.Elements("hints").Select(n => Hint(n, context)).OfType<DrillHint>()],
            Observe = [.. map.List("observe").Select(n => n.Value.Trim())],
            Asks = QuestionReader.Read(map.Take("asks"), context),
            SolvedBySpan = map.SpanOf("solved by"),
            SolvedBy = map.Names("solved by", NameUse.Card),
        };
        map.Finish();
        foreach (DrillObjective late in drill.Objectives.Where(o => o.Within > drill.TimeLimit))
        {
            context.Add(BookMessages.OutOfRange(late.Span, "`within`", $"{late.Within:0.###} s", "no more than the drill's time limit"));
        }

        foreach ((DrillObjective objective, string report) in drill.Objectives.SelectMany(o => o.OrReported.Where(r => drill.Reports.All(known => known.Name != r)).Select(r => (o, r))))
        {
            context.Add(BookMessages.NotAChoice(objective.Span, "`or reported`", report, [.. drill.Reports.Select(r => r.Name)]));
        }

        return whole && drill.Situation.Length > 0 && drill.Role.Length > 0 ? drill : null;
    }

    private static (FormulaText? Is, ImmutableArray<string> KnownFrom) Cue(MapReader map, ReadContext context)
    {
        if (map.Take("cue") is not { } node || MapReader.Of(node, node.Span, "the cue", context) is not { } cue)
        {
            return (null, []);
        }

        cue.Required("is", "FORMULA");
        FormulaText? when = cue.Formula("is");
        ImmutableArray<string> known = [.. cue.List("known from").Select(k => k.Value.Trim())];
        cue.Finish();
        return (when, known);
    }

    private static DrillObjective? Objective(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the objective `{entry.Name}`", context) is not { } map || !map.Required("is", "FORMULA") || map.Formula("is") is not { } formula)
        {
            return null;
        }

        DrillObjective objective = new(entry.Name, formula, entry.Key.Span)
        {
            Within = map.Has("within") ? map.Positive("within", Dimension.Second, 3600) : null,
            Stays = map.NotNegative("stays", Dimension.Second, new(0, 0, UnitTable.SiOf(Dimension.Second))).From,
            Worth = map.Positive("worth", Dimension.One, 1),
            IsCritical = map.YesNo("critical", true),
            Once = map.YesNo("once", false),
            OrReported = [.. map.List("or reported").Select(r => r.Value.Trim())],
            Because = map.Text("because"),
        };
        map.Finish();
        return objective;
    }

    private static DrillReport? Report(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the report `{entry.Name}`", context) is not { } map || !map.Required("is", "FORMULA") || map.Formula("is") is not { } formula)
        {
            return null;
        }

        DrillReport report = new(entry.Name, formula, [.. map.List("told as").Select(t => t.Value.Trim())], map.Text("because"), entry.Key.Span);
        map.Finish();
        return report;
    }

    /// <summary>A formula alone, or with why.</summary>
    private static DrillNever? Never(YamlEntry entry, ReadContext context)
    {
        if (entry.Value is YamlScalar { IsNull: false } only)
        {
            return new(entry.Name, new(only.Value.Trim(), Values.Content(only)), "", entry.Key.Span);
        }

        if (MapReader.Of(entry.Value, entry.Key.Span, $"the must-never `{entry.Name}`", context) is not { } map || !map.Required("is", "FORMULA") || map.Formula("is") is not { } formula)
        {
            return null;
        }

        DrillNever never = new(entry.Name, formula, map.Text("because"), entry.Key.Span);
        map.Finish();
        return never;
    }

    private static DrillOrder? Order(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the order `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("first", "FORMULA") & map.Required("then", "FORMULA");
        (FormulaText? first, FormulaText? then) = (map.Formula("first"), map.Formula("then"));
        string because = map.Text("because");
        map.Finish();
        return whole && first is not null && then is not null ? new(entry.Name, first, then, because, entry.Key.Span) : null;
    }

    private static DrillHint? Hint(YamlNode node, ReadContext context)
    {
        if (MapReader.Of(node, node.Span, "the hint", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("says", "Look where the level falls fastest.");
        DrillHint hint = new(map.Text("says"), map.NotNegative("costs", Dimension.One, new(1, 1, UnitTable.SiOf(Dimension.One))).From, node.Span);
        map.Finish();
        return whole ? hint : null;
    }
}
