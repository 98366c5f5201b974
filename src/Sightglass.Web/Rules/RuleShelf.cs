using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Rules;

namespace Sightglass.Web.Rules;

/// <summary>The sets of published rules that are served: each read once.</summary>
/// <param name="Sets">Those that could be read.</param>
/// <param name="Refused">What is wrong with the others, each line with its place.</param>
public sealed record RuleShelf(ImmutableArray<RuleSet> Sets, ImmutableArray<string> Refused)
{
    /// <summary>Reads the sets of some folders.</summary>
    public static RuleShelf Open(IReadOnlyList<string> folders)
    {
        ArgumentNullException.ThrowIfNull(folders);
        List<RuleSet> sets = [];
        List<string> refused = [];
        foreach (string folder in folders)
        {
            DiagnosticList found = [];
            if (RuleReader.Read(folder, found) is { } set)
            {
                sets.Add(set);
            }
            else
            {
                refused.AddRange(found.Where(d => d.Severity == Severity.Error).Select(d => d.ToString()));
            }
        }

        return new([.. sets], [.. refused]);
    }
}
