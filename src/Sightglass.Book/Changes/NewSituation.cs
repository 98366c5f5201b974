using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>A situation as an entry of the section <c>situations</c>: what is read back is the same situation.</summary>
public static class NewSituation
{
    private static readonly Unit s_second = UnitTable.Get("s");

    private static readonly Unit s_share = UnitTable.Get("%");

    public static BookAddition Of(Situation situation)
    {
        ArgumentNullException.ThrowIfNull(situation);
        NewEntry entry = new NewEntry().Text("text", situation.Text).Texts("road number", situation.RoadNumbers).Text("train", situation.Train ?? "").Texts("cards", situation.Cards)
            .List("people", situation.People.Select(p => new NewEntry().Text("role", p.Role).Texts("at", p.Places).Map));
        if (situation.Answers != AnswerStart.Ordinary)
        {
            AnswerStart answers = situation.Answers;
            entry.Node("answers", new NewEntry().Text("after", Range(answers.From, answers.To, s_second)).Text("unanswered", NewEntry.Amount(answers.Unanswered, s_share)).Map);
        }

        if (situation.States is { } states)
        {
            entry.Node("states", States(states));
        }

        return new("situations", situation.Name, entry.Maps("start", situation.Start, s => (s.Name, Value(s))).List("faults", situation.Faults.Select(Fault)).Map);
    }

    private static YamlMap States(StatesDraw states)
    {
        NewEntry entry = new NewEntry().Text("recording", states.Recording).Text("from", states.From ?? "").Text("to", states.To ?? "");
        return (states.Every > 0 ? entry.Text("every", NewEntry.Amount(states.Every, s_second)) : entry).Map;
    }

    private static YamlMap Fault(FaultStart fault)
    {
        NewEntry entry = new NewEntry().Text("fault", fault.Fault).Texts("on", fault.Items);
        if (fault.AfterTo > 0)
        {
            entry.Text("after", Range(fault.AfterFrom, fault.AfterTo, s_second));
        }

        if (fault.Chance < 1)
        {
            entry.Text("chance", NewEntry.Amount(fault.Chance, s_share));
        }

        // What the author did not write is as the kind has it.
        foreach (StartValue value in fault.Values.Where(v => v.Span != Span.None))
        {
            entry.Node(value.Name, Value(value));
        }

        return entry.Map;
    }

    private static YamlNode Value(StartValue value) => value.OneOf.IsDefaultOrEmpty
        ? NodeText.Text(Range(value.From, value.To, value.Unit))
        : value.OneOf is [var only] ? NodeText.Text(only) : new YamlList(default, [.. value.OneOf.Select(NodeText.Text)]);

    private static string Range(double from, double to, Unit? unit) => from == to ? NewEntry.Amount(from, unit) : $"{NewEntry.Amount(from, unit)} .. {NewEntry.Amount(to, unit)}";
}
