using System.Collections.Concurrent;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;

namespace Sightglass.Plant.Plans;

/// <summary>
/// The plans of a class: of the machine as described, of every road number on which something differs, alone and in each train. Numbers without modifications are
/// the class's machine.
/// </summary>
public sealed class Fleet
{
    private static readonly EqualityComparer<StartRule> s_sameStart = EqualityComparer<StartRule>.Create(
        (a, b) => a!.Name == b!.Name && a.Dimension == b.Dimension && a.Least == b.Least && a.Greatest == b.Greatest && (a.Choices.IsDefault ? b.Choices.IsDefault : !b.Choices.IsDefault && a.Choices.SequenceEqual(b.Choices)));

    private static readonly EqualityComparer<FaultValue> s_sameFault = EqualityComparer<FaultValue>.Create((a, b) => a!.Name == b!.Name && a.Known.SequenceEqual(b.Known));

    private readonly ConcurrentDictionary<(string RoadNumber, string Train), Lazy<Plan?>> _plans = new();
    private readonly ConcurrentDictionary<string, bool> _alike = new(StringComparer.Ordinal);

    /// <summary>The plan of the class itself; null until it was compiled without errors.</summary>
    public Plan? Class => Known("", "");

    /// <summary>Compiles the plans of a book: of the class, of its road numbers, of its trains. Null where one has errors; all of them are in <paramref name="found"/>.</summary>
    public static Fleet? Compile(ClassBook book, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(book);
        Fleet fleet = new();
        fleet.Add(book, found);
        foreach (RoadNumber number in book.RoadNumbers.Values.Where(n => n.IsModified).OrderBy(n => n.Span))
        {
            fleet.Add(book.For(number.Number), found);
        }

        foreach (Train train in book.Trains.Values.Where(_ => !found.HasErrors).OrderBy(t => t.Span))
        {
            fleet.Add(book.Coupled(train.Name), found);
        }

        return found.HasErrors ? null : fleet;
    }

    /// <summary>Compiles the class, or the book as changed for a road number or coupled in a train. Fits as a check of the book, which is made for all of them and for its cars.</summary>
    public void Add(ClassBook variant, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(variant);
        if (PlanCompiler.Compile(variant, found) is { } plan && variant.CarClass is null)
        {
            _plans[(variant.RoadNumberInUse ?? "", variant.TrainInUse ?? "")] = new(plan);
        }
    }

    /// <summary>The plan that a road number shares with all that do not differ from it, in the train of a situation; null where it has errors. For several threads at once.</summary>
    /// <param name="roadNumber">Null for the class.</param>
    /// <param name="train">Null for the machine alone.</param>
    public Plan? MachineOf(string? roadNumber, string? train) => Find(IsModified(roadNumber) ? roadNumber! : "", train ?? "");

    /// <summary>The plan of a road number under its own name, in the train of a situation; null where it has errors or is not in the book.</summary>
    /// <param name="roadNumber">Null for the class.</param>
    /// <param name="train">Null for the machine alone.</param>
    public Plan? For(string? roadNumber, string? train) => Find(roadNumber ?? "", train ?? "");

    /// <summary>
    /// Whether what begins and what breaks on a road number has the class's names and limits, so that a situation in a train fits it where it fits the class: nothing else of a machine bears on that. The plans
    /// of both, alone, are compiled without errors.
    /// </summary>
    public bool BeginsAlike(string roadNumber) => !IsModified(roadNumber) || _alike.GetOrAdd(roadNumber, n => Known(n, "") is { } own && Class is { } whole && AreAlike(own, whole));

    private static bool AreAlike(Plan a, Plan b) =>
        a.Starts.Values.SequenceEqual(b.Starts.Values, s_sameStart)
        && a.Items.Keys.SequenceEqual(b.Items.Keys)
        && a.Items.Values.Zip(b.Items.Values).All(p => p.First.Faults.Keys.SequenceEqual(p.Second.Faults.Keys) && p.First.Faults.Values.Zip(p.Second.Faults.Values).All(f => f.First.SequenceEqual(f.Second, s_sameFault)));

    private Plan? Known(string roadNumber, string train) => _plans.GetValueOrDefault((roadNumber, train))?.Value;

    private Plan? Find(string roadNumber, string train) =>
        Class?.Book is { } book && (roadNumber.Length == 0 || book.RoadNumbers.ContainsKey(roadNumber)) && (train.Length == 0 || book.Trains.ContainsKey(train))
            ? _plans.GetOrAdd((roadNumber, train), _ => new(() => Compile(book, roadNumber, train))).Value
            : Known(roadNumber, train);

    private Plan? Compile(ClassBook book, string roadNumber, string train)
    {
        if (train.Length == 0)
        {
            return PlanCompiler.Compile(roadNumber.Length == 0 ? book : book.For(roadNumber), []);
        }

        ClassBook machine = roadNumber.Length == 0 ? book : Known(roadNumber, "")?.Book ?? book.For(roadNumber);
        return PlanCompiler.Compile(machine.Coupled(train), []);
    }

    private bool IsModified(string? roadNumber) =>
        roadNumber is not null && Class?.Book.RoadNumbers.GetValueOrDefault(roadNumber) is { IsModified: true };
}
