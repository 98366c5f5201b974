using System.Collections.Concurrent;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;

namespace Sightglass.Plant.Plans;

/// <summary>The plans of a class: of the machine as described, and of every road number on which something differs. Numbers without modifications are the class's machine.</summary>
public sealed class Fleet
{
    private readonly ConcurrentDictionary<string, Plan> _plans = new(StringComparer.Ordinal);

    /// <summary>The plan of the class itself; null until it was compiled without errors.</summary>
    public Plan? Class => _plans.GetValueOrDefault("");

    /// <summary>Compiles every plan of a book. Null where one has errors; all of them are in <paramref name="found"/>.</summary>
    public static Fleet? Compile(ClassBook book, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(book);
        Fleet fleet = new();
        fleet.Add(book, found);
        foreach (RoadNumber number in book.RoadNumbers.Values.Where(n => n.IsModified).OrderBy(n => n.Span))
        {
            fleet.Add(book.For(number.Number), found);
        }

        return found.HasErrors ? null : fleet;
    }

    /// <summary>Compiles the class, or the book as changed for a road number. Fits as a check of the book, which is made for all of them.</summary>
    public void Add(ClassBook variant, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(variant);
        if (PlanCompiler.Compile(variant, found) is { } plan)
        {
            _plans[variant.RoadNumberInUse ?? ""] = plan;
        }
    }

    /// <summary>The plan that a road number shares with all that do not differ from it; null where it has errors.</summary>
    /// <param name="roadNumber">Null for the class.</param>
    public Plan? MachineOf(string? roadNumber) => IsModified(roadNumber) ? _plans.GetValueOrDefault(roadNumber!) : Class;

    /// <summary>The plan of a road number under its own name; null where it has errors or is not in the book.</summary>
    /// <param name="roadNumber">Null for the class.</param>
    public Plan? For(string? roadNumber)
    {
        if (!_plans.TryGetValue(roadNumber ?? "", out Plan? plan) && roadNumber is not null && Class?.Book.RoadNumbers.ContainsKey(roadNumber) == true)
        {
            Add(Class.Book.For(roadNumber), []);
            plan = _plans.GetValueOrDefault(roadNumber);
        }

        return plan;
    }

    private bool IsModified(string? roadNumber) =>
        roadNumber is not null && Class?.Book.RoadNumbers.GetValueOrDefault(roadNumber) is { IsModified: true };
}
