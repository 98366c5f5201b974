using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Language;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.Training.Drills;

namespace Sightglass.Web.Room.Instructor;

/// <summary>A condition of true quantities, facts and faults, as the book writes them, up to which a drill runs on.</summary>
public static class RunCondition
{
    /// <summary>Reads what was written.</summary>
    /// <param name="drill">Its plant has the names.</param>
    /// <param name="text">Such as <c>fill of aft compartment &lt; 20 %</c>.</param>
    /// <param name="wrong">Everything that is wrong with it, and what would be right.</param>
    /// <returns>Not negative while it is so; null where it cannot be read.</returns>
    public static Signal? Read(BoundDrill drill, string text, out IReadOnlyList<string> wrong)
    {
        ArgumentNullException.ThrowIfNull(drill);
        if (string.IsNullOrWhiteSpace(text))
        {
            wrong = [Say.It("Write a condition in the names of the book, such as engine runs, or pressure of first main reservoir > 100 psi.")];
            return null;
        }

        DiagnosticList found = [];
        TruthScope scope = drill.Plan.Truth;
        Formula? formula = FormulaParser.Parse(text, default, scope, found, FormulaKind.Condition);
        wrong = [.. found.Where(d => d.Severity == Severity.Error).Select(d => Say.Begin(d.Fix is { } fix ? $"{d.Message}; {fix}{(fix.EndsWith('?') ? "" : ".")}" : $"{d.Message}."))];
        return formula is null ? null : new TruthSignal(formula, scope);
    }

    /// <summary>What the drill itself knows: its objectives and must-nevers, each with what is not negative while it is so.</summary>
    public static IReadOnlyList<(string Name, Signal Signal)> Ready(BoundDrill drill)
    {
        ArgumentNullException.ThrowIfNull(drill);
        return
        [
            .. drill.Cue is { } cue ? new[] { (Say.It("the cue has come"), cue) } : [],
            .. drill.Drill.Objectives.Select((o, i) => (Say.Book(o.Name), drill.Objectives[i])),
            .. drill.Drill.MustNever.Select((n, i) => (Say.With($"must never: {n.Name}"), drill.MustNever[i])),
        ];
    }
}
