using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads bets. What they name is looked for where they are bound to a plant, because a train has names of its own.</summary>
internal static class BetReader
{
    /// <summary>More lines than these cannot be told from one another on a wall.</summary>
    private const int MostShown = 4;

    private const int FewestAnswers = 2;
    private const int MostAnswers = 6;

    public static Bet? Read(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the bet `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("asks", "What happens when …?") & map.Required("situation", "SITUATION") & map.Required("runs for", "2 h") & map.Required("answers", "[ { says: …, when: CONDITION } ]");
        YamlScalar? situation = map.Scalar("situation");
        Bet bet = new(entry.Name, entry.Key.Span)
        {
            Asks = map.Text("asks"),
            System = map.Name("system", NameUse.System),
            Situation = situation?.Value ?? "",
            SituationSpan = situation?.Span ?? default,
            RunsFor = map.Positive("runs for", Dimension.Second, 1),
            Acts = [.. map.Elements("acts").Select(n => Act(n, context)).OfType<BetAct>().OrderBy(a => a.After)],
            Shows = [.. map.Elements("shows").Select(n => Show(n, context)).OfType<BetShow>()],
            Answers = [.. map.Elements("answers").Select(n => Answer(n, context)).OfType<BetChoice>()],
            Because = map.Text("because"),
            Lesson = map.Text("lesson"),
        };
        if (whole && bet.Answers.Length is < FewestAnswers or > MostAnswers)
        {
            context.Add(BookMessages.OutOfRange(map.KeySpan("answers"), "`answers`", $"{bet.Answers.Length}", $"{FewestAnswers} to {MostAnswers} answers"));
            whole = false;
        }

        if (bet.Shows.Length > MostShown)
        {
            context.Add(BookMessages.OutOfRange(map.KeySpan("shows"), "`shows`", $"{bet.Shows.Length}", $"at most {MostShown} lines"));
        }

        foreach (BetAct late in bet.Acts.Where(a => whole && a.After >= bet.RunsFor))
        {
            context.Add(BookMessages.OutOfRange(late.Span, "`after`", $"{late.After:0.###} s", "less than the bet runs for"));
        }

        map.Finish();
        return whole && bet.Situation.Length > 0 ? bet : null;
    }

    private static BetAct? Act(YamlNode node, ReadContext context)
    {
        if (MapReader.Of(node, node.Span, "the act", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("set", "CONTROL") & map.Required("to", "POSITION");
        double after = map.NotNegative("after", Dimension.Second, new(0, 0, UnitTable.SiOf(Dimension.Second))).From;
        string name = map.Text("set");
        double value = WorldInput.Find(name) is { } input ? map.Number("to", input.Dimension) : 0;
        BetAct act = new(after, name, map.Text("to"), value, node.Span);
        map.Finish();
        return whole ? act : null;
    }

    private static BetShow? Show(YamlNode node, ReadContext context)
    {
        if (node is YamlScalar { IsNull: false } formula)
        {
            return new(formula.Value.Trim(), formula.Value.Trim(), Values.Content(formula));
        }

        if (MapReader.Of(node, node.Span, "what is shown", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("is", "FORMULA");
        YamlScalar? s = map.Scalar("is");
        string name = map.Text("as", s?.Value.Trim() ?? "");
        map.Finish();
        return whole && s is not null ? new(s.Value.Trim(), name, Values.Content(s)) : null;
    }

    private static BetChoice? Answer(YamlNode node, ReadContext context)
    {
        if (MapReader.Of(node, node.Span, "the answer", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("says", "It stops within the hour.");
        YamlScalar? when = map.Scalar("when");
        BetChoice answer = new(map.Text("says"), when?.Value.Trim(), when is null ? node.Span : Values.Content(when), node.Span);
        map.Finish();
        return whole ? answer : null;
    }
}
