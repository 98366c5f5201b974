using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Training.Evaluation;

/// <summary>What an assessor judges of a drill for themselves: what it asks, in the words of the sheet, whatever came of it.</summary>
public static class AssessedLines
{
    /// <summary>In the order of the sheet, kept unsaid.</summary>
    public static ImmutableArray<FormattableString> Of(Drill drill)
    {
        ArgumentNullException.ThrowIfNull(drill);
        FormattableString[] report = drill.Reports.IsEmpty ? [] : [$"Reported what was found"];
        return
        [
            .. drill.MustNever.Select(n => (FormattableString)$"Must never: {n.Name}"),
            $"Nobody came to harm",
            $"Touched only what is theirs, with the permission that it needs",
            .. drill.Orders.Select(o => (FormattableString)$"{o.Name}"),
            .. report,
            .. drill.Objectives.Select(o => (FormattableString)$"{o.Name}"),
        ];
    }
}
