using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>A drill without cue, events, reports and orders as an entry of the section <c>drills</c>.</summary>
public static class NewDrill
{
    public static BookAddition Of(Drill drill)
    {
        ArgumentNullException.ThrowIfNull(drill);
        NewEntry entry = new NewEntry().Text("level", drill.Level switch { DrillLevel.FirstDay => "first day", DrillLevel.Qualifying => "qualifying", _ => "working" })
            .Text("aim", drill.Aim).Text("situation", drill.Situation).Text("role", drill.Role).Text("time limit", NewEntry.Time(drill.TimeLimit)).Text("stop word", drill.StopWord)
            .Texts("tools", drill.Tools).YesNo("with cards", drill.WithCards, usual: true)
            .Maps("objectives", drill.Objectives, o => (o.Name, Objective(o))).Maps("must never", drill.MustNever, n => (n.Name, NodeText.Text(n.Is.Text)))
            .List("asks", drill.Asks.Select(a => new NewEntry().Text("question", a.Asked).Text("answer", a.Answer).Map)).Texts("observe", drill.Observe).Texts("solved by", drill.SolvedBy);
        return new("drills", drill.Name, entry.Map);
    }

    private static YamlMap Objective(DrillObjective objective)
    {
        NewEntry entry = new NewEntry().Text("is", objective.Is.Text);
        if (objective.Stays > 0)
        {
            entry.Text("stays", NewEntry.Time(objective.Stays));
        }

        return entry.YesNo("once", objective.Once, usual: false).YesNo("critical", objective.IsCritical, usual: true).Map;
    }
}
