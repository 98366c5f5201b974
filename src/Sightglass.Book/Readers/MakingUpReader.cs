using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads what a class says of making up a train. Positions, facts and lines are looked up when the whole book is known.</summary>
internal static class MakingUpReader
{
    /// <param name="node">Of the key <c>making up</c>; null where there is none.</param>
    /// <param name="context">Takes findings and names.</param>
    public static MakingUp? Read(YamlNode? node, ReadContext context)
    {
        if (node is null || MapReader.Of(node, node.Span, "`making up`", context) is not { } map)
        {
            return null;
        }

        MakingUp made = new(node.Span)
        {
            Text = map.Text("text"),
            Lines = [.. Entries(map, "lines", context).Select(e => Line(e, context)).OfType<LineUse>()],
            Lead = Settings(map.Take("lead"), "`lead`", context),
            Trail = Settings(map.Take("trail"), "`trail`", context),
            Dead = Settings(map.Take("dead"), "`dead`", context),
            Commands = [.. Entries(map, "commands", context).Select(e => Command(e, context)).OfType<TrainCommand>()],
        };
        if (map.Take("brakes") is { } brakes && MapReader.Of(brakes, brakes.Span, "`brakes`", context) is { } how)
        {
            made = made with { Brakes = Set(how, context), BrakesWithin = how.Positive("within", Dimension.Second, made.BrakesWithin) };
            how.Finish();
        }

        map.Finish();
        return made;
    }

    /// <summary>Controls with their positions, in the order of the file.</summary>
    public static ImmutableArray<Setting> Settings(YamlNode? node, string owner, ReadContext context) =>
        node is null || MapReader.AsMap(node, owner, context) is not { } map ? [] : [.. map.Entries.Select(e => Setting(e, context)).OfType<Setting>()];

    /// <summary>What does not fit the book, now that all of it is read.</summary>
    public static void Check(ClassBook book, ReadContext context)
    {
        if (book.MakingUp is not { } made)
        {
            return;
        }

        foreach (Setting set in made.Lead.Concat(made.Trail).Concat(made.Dead).Concat(made.Commands.Select(c => c.Set)).Append(made.Brakes).OfType<Setting>())
        {
            if (book.Items.TryGetValue(set.Item, out Item? item) && !item.Positions.Contains(set.Position))
            {
                context.AddMissing(BookMessages.NoSuchPosition(set.Span, set.Position, set.Item, item.Positions));
            }
        }

        foreach (string fact in made.Commands.SelectMany(c => new[] { c.Answers, c.AnswersTurned }).OfType<string>().Where(f => !book.Facts.ContainsKey(f)))
        {
            context.AddMissing(BookMessages.NotAChoice(made.Commands.First(c => c.Answers == fact || c.AnswersTurned == fact).Span, "`answers`: a fact of the machine", fact, book.Facts.Keys));
        }

        string[] joined = [.. book.Cars.Values.Append(book).SelectMany(b => b.Ends.Values).SelectMany(e => e.Joins.Keys).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        foreach (LineUse line in made.Lines.Where(l => !joined.Contains(l.Line)))
        {
            context.AddMissing(BookMessages.NotAChoice(line.Span, "`lines`: what ends join", line.Line, joined));
        }
    }

    private static Setting? Setting(YamlEntry entry, ReadContext context)
    {
        if (MapReader.IsRestOfText(entry))
        {
            context.Add(BookMessages.TextWithComma(entry.Key.Span, entry.Name));
            return null;
        }

        context.Uses(NameUse.Item, entry.Name, entry.Key.Span);
        return Values.Scalar(entry.Value, $"`{entry.Name}`", context) is { } position ? new(entry.Name, position.Value.Trim(), position.Span) : null;
    }

    private static IEnumerable<YamlEntry> Entries(MapReader map, string key, ReadContext context) =>
        map.Take(key) is { } node && MapReader.AsMap(node, $"`{key}`", context) is { } found ? found.Entries : [];

    private static LineUse? Line(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the line `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        LineUse line = new(entry.Name, entry.Key.Span)
        {
            BetweenMachines = map.Choice("goes to", "all", "machines") == "machines",
            IsNeeded = map.YesNo("needed", absent: false),
            Lost = map.Text("lost"),
        };
        map.Finish();
        return line;
    }

    private static TrainCommand? Command(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the command `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("answers", "FACT");
        Setting? set = Set(map, context);
        string answers = map.Text("answers");
        string turned = map.Text("turned");
        bool pulls = map.YesNo("pulls", absent: false);
        map.Finish();
        return whole && set is not null && answers.Length > 0 ? new(entry.Name, entry.Key.Span) { Set = set, Answers = answers, AnswersTurned = turned.Length > 0 ? turned : null, Pulls = pulls } : null;
    }

    private static Setting? Set(MapReader map, ReadContext context)
    {
        bool whole = map.Required("set", "CONTROL") & map.Required("to", "POSITION");
        string? item = map.Name("set", NameUse.Item);
        YamlScalar? to = map.Scalar("to");
        return whole && item is not null && to is not null ? new(item, to.Value.Trim(), to.Span) : null;
    }
}
