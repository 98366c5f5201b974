using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Trials;

/// <summary>What was found on several machines: each finding once; what shows on some of the road numbers only says on which.</summary>
internal sealed class FleetFindings(ImmutableArray<string> all)
{
    private readonly List<(ImmutableArray<string> Numbers, DiagnosticList Found)> _on = [];

    /// <summary>Takes what is found on the machine of these road numbers.</summary>
    public DiagnosticList On(ImmutableArray<string> numbers)
    {
        _on.Add((numbers, []));
        return _on[^1].Found;
    }

    public void AddTo(DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(found);
        foreach (IGrouping<(string, Span, string), (Diagnostic Found, ImmutableArray<string> Numbers)> same in
            _on.SelectMany(o => o.Found.Select(d => (Found: d, o.Numbers))).GroupBy(d => (d.Found.Code, d.Found.Span, d.Found.Message)))
        {
            string[] numbers = [.. same.SelectMany(d => d.Numbers).Distinct()];
            Diagnostic first = same.First().Found;
            found.Add(numbers.Length == all.Length ? first : first with { Message = $"{first.Message} (road number {string.Join(", ", numbers)})" });
        }
    }
}
