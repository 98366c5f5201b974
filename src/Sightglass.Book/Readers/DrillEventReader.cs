using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads what happens on the way in a drill: its moment, and one of three things that it may do.</summary>
internal static class DrillEventReader
{
    public static DrillEvent? Read(YamlNode node, ReadContext context)
    {
        if (MapReader.Of(node, node.Span, "the event", context) is not { } map)
        {
            return null;
        }

        string[] does = [.. new[] { "set", "fault", "without", "says" }.Where(map.Has)];
        if (does.Length != 1)
        {
            context.Add(BookMessages.WrongShape(node.Span, "an event", "one of `set` with `to`, `fault` with `on`, `without` with `on`, or `says` with `by`", does.Length == 0 ? "none of them" : $"{does.Length} of them"));
        }

        string sets = map.Text("set");
        YamlScalar? fault = map.Scalar("fault");
        YamlScalar? without = map.Scalar("without");
        bool whole = does.Length == 1 && does[0] switch
        {
            "set" => map.Required("to", "POSITION"),
            "says" => map.Required("by", "ROLE"),
            _ => map.Required("on", "ITEM"),
        };
        DrillEvent read = new(node.Span)
        {
            After = map.NotNegative("after", Dimension.Second, new(0, 0, UnitTable.SiOf(Dimension.Second))).From,
            When = map.Formula("when"),
            At = map.Has("at") ? map.Text("at") : null,
            Operated = map.Has("operated") ? map.Text("operated") : null,
            Sets = sets.Length > 0 ? sets : null,
            ToValue = WorldInput.Find(sets) is { } input ? map.Number("to", input.Dimension) : 0,
            To = map.Text("to"),
            Fault = (fault ?? without)?.Value.Trim(),
            TakesOut = without is not null,
            On = map.Text("on"),
            Values = [.. map.Entries("values").Select(ValueOf).OfType<(string, FormulaText)>()],
            Says = map.Text("says"),
            By = map.Name("by", NameUse.Role),
        };
        map.Finish();
        return whole ? read : null;

        (string, FormulaText)? ValueOf(YamlEntry e) => Values.Scalar(e.Value, $"`{e.Name}`", context) is { } s ? (e.Name, new FormulaText(s.Value.Trim(), Values.Content(s))) : null;
    }
}
