using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads a situation. Starting values are checked against the items, which have been read before.</summary>
/// <param name="context">Takes findings and names.</param>
/// <param name="scope">The names it may set.</param>
/// <param name="vehicles">Of its train.</param>
/// <param name="recordings">Of the book.</param>
internal sealed class SituationReader(ReadContext context, StartScope scope, ImmutableArray<Vehicle> vehicles, ImmutableSortedDictionary<string, Recording> recordings)
{
    private readonly EachCar _each = new(vehicles, scope, context);

    public Situation? Read(YamlEntry entry)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the situation `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        Situation situation = new()
        {
            Name = entry.Name,
            Span = entry.Key.Span,
            Text = map.Text("text"),
            RoadNumbers = map.Names("road number", NameUse.RoadNumber),
            Train = map.Name("train", NameUse.Train),
            Cards = map.Names("cards", NameUse.Card),
            People = [.. map.Elements("people").Select(Person).OfType<PersonStart>()],
            Answers = Answers(map.Take("answers")),
            Start = Start(map.Take("start")),
            Faults = [.. map.Elements("faults").Select(n => new FaultReader(context, scope, _each).Read(n)).OfType<FaultStart>()],
        };
        situation = situation with { States = new StatesReader(context, recordings).Read(map.Take("states"), situation) };
        map.Finish();
        return situation;
    }

    private PersonStart? Person(YamlNode node)
    {
        if (MapReader.Of(node, node.Span, "the person", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("role", "ROLE") & map.Required("at", "PLACE");
        string? role = map.Name("role", NameUse.Role);
        ImmutableArray<string> at = map.Names("at", NameUse.Place);
        map.Finish();
        return whole && role is not null && at.Length > 0 ? new(role, at, node.Span) : null;
    }

    private AnswerStart Answers(YamlNode? node)
    {
        if (node is null || MapReader.Of(node, node.Span, "`answers`", context) is not { } map)
        {
            return AnswerStart.Ordinary;
        }

        AnswerStart usual = AnswerStart.Ordinary;
        QuantityRange after = map.NotNegative("after", Dimension.Second, new(usual.From, usual.To, UnitTable.SiOf(Dimension.Second)));
        double unanswered = map.Share("unanswered", usual.Unanswered);
        map.Finish();
        return new(after.From, after.To, unanswered);
    }

    private ImmutableArray<StartValue> Start(YamlNode? node) =>
        node is not null && MapReader.AsMap(node, "`start`", context) is { } map ? [.. map.Entries.SelectMany(_each.Expand).Select(One).OfType<StartValue>()] : [];

    private static string Shown(WorldInput input, double value) => string.Create(CultureInfo.InvariantCulture, $"{UnitTable.Get(input.Unit).FromSi(value)} {input.Unit}");

    private StartValue? One(YamlEntry entry)
    {
        Span span = entry.Key.Span;
        if (MapReader.IsRestOfText(entry))
        {
            context.Add(BookMessages.TextWithComma(span, entry.Name));
            return null;
        }

        if (scope.Find(entry.Name, span, context) is not { } meaning)
        {
            return null;
        }

        if (meaning.Positions.IsDefault)
        {
            StartValue? number = StartValueReader.Number(entry, meaning.Dimension, context);
            if (number is not null && meaning.Input is { } input && (number.From < input.Least || number.To > input.Greatest))
            {
                context.Add(BookMessages.OutOfRange(entry.Value.Span, $"`{entry.Name}`", $"{(entry.Value as YamlScalar)?.Value}", $"between {Shown(input, input.Least)} and {Shown(input, input.Greatest)}"));
            }

            return number;
        }

        StartValue? value = StartValueReader.Choice(entry, context);
        foreach (string wrong in value is null ? [] : value.OneOf.Where(p => !meaning.Positions.Contains(p)))
        {
            context.AddMissing(BookMessages.NoSuchPosition(entry.Value.Span, wrong, entry.Name, meaning.Positions));
        }

        return value;
    }
}
