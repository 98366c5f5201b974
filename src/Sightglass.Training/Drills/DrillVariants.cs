using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.World.Situations;

namespace Sightglass.Training.Drills;

/// <summary>A drill on every machine that its situation may draw, each bound when it is first asked for. May be asked from any thread.</summary>
/// <param name="fleet">The plans of the book, all without errors.</param>
/// <param name="drill">Of the book; its situation is there.</param>
public sealed class DrillVariants(Fleet fleet, Drill drill)
{
    private readonly DrawnRange _numbers = RoadNumberDraw.RangeOf(fleet.Class!.Book, fleet.Class.Book.Situations[drill.Situation]);
    private readonly Dictionary<string, BoundDrill> _bound = new(StringComparer.Ordinal);

    public Drill Drill => drill;

    /// <summary>The road number that a case draws; null for a book without.</summary>
    public string? NumberOf(CaseDraws draws) => _numbers.Words.IsEmpty ? null : _numbers.Say(draws);

    /// <summary>The drill on the machine of a case; null where it does not fit, with the reasons in <paramref name="found"/>.</summary>
    public BoundDrill? For(CaseDraws draws, DiagnosticList found)
    {
        string? number = NumberOf(draws);
        string key = number ?? "";
        lock (_bound)
        {
            if (!_bound.TryGetValue(key, out BoundDrill? bound) && DrillBinder.Bind(fleet, drill, found, number) is { } fits)
            {
                bound = _bound[key] = fits;
            }

            return bound;
        }
    }
}
