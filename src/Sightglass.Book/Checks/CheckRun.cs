using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Checks;

/// <summary>Runs the checks on the class, then beside each other on every road number with modifications, on every class of cars and on every train.</summary>
internal sealed class CheckRun(ClassBook book, ReadContext context, ImmutableArray<BookCheck> checks)
{
    public void Run(BookVariants variants)
    {
        // Where text could not be read, names seem to be missing that are not.
        if (context.Found.AnyDamage)
        {
            return;
        }

        ImmutableArray<NameReference> references = context.References;
        context.Found.AddRange(One(book, references));
        (string Number, Task<DiagnosticList> Found)[] numbers = [.. variants.Numbers.OrderBy(n => n.Number.Number, StringComparer.Ordinal).Select(own => (own.Number.Number, Task.Run(() =>
            One(book with { Items = own.Items, RoadNumberInUse = own.Number.Number }, [.. references.Where(r => !own.Changed.Contains(r.Owner)), .. own.References]))))];
        Task<DiagnosticList>[] cars = [.. variants.Cars.Select(own => Task.Run(() => One(own.Car, own.References)))];
        foreach ((string number, Task<DiagnosticList> found) in numbers)
        {
            AddOn($"road number {number}", found.GetAwaiter().GetResult());
        }

        foreach (Task<DiagnosticList> found in cars)
        {
            context.Found.AddRange(found.GetAwaiter().GetResult());
        }

        // What is wrong with a vehicle would be told again for every one that is coupled.
        bool sound = !context.Found.HasErrors;
        foreach ((string train, Task<(DiagnosticList Notes, DiagnosticList Plant)> found) in variants.Trains.Select(own => (own.Coupled.TrainInUse!, Task.Run(() => Coupled(own, sound)))).ToArray())
        {
            (DiagnosticList notes, DiagnosticList plant) = found.GetAwaiter().GetResult();
            context.Found.AddRange(notes);
            AddOn($"train {train}", plant);
        }
    }

    private (DiagnosticList Notes, DiagnosticList Plant) Coupled(TrainItems own, bool sound)
    {
        DiagnosticList notes = [];
        new ReferenceCheck(own.Coupled, context.Found.Apart(notes)).Run(own.Context.References);
        return (notes, sound ? Plant(own.Coupled) : []);
    }

    private void AddOn(string variant, IEnumerable<Diagnostic> found)
    {
        foreach (Diagnostic d in found)
        {
            context.Found.AddOn(variant, d);
        }
    }

    /// <summary>The checks that came from above: those of the reader speak of what authors write for each vehicle.</summary>
    private DiagnosticList Plant(ClassBook coupled)
    {
        DiagnosticList found = [];
        foreach (BookCheck check in checks.Except(BookChecks.Default))
        {
            check(coupled, found);
        }

        return found;
    }

    private DiagnosticList One(ClassBook variant, ImmutableArray<NameReference> references)
    {
        DiagnosticList notes = [];
        Findings found = context.Found.Apart(notes);
        new ReferenceCheck(variant, found).Run(references);
        if (variant.Items.Values.Any(i => i.IsKindUnknown))
        {
            return notes;
        }

        // What lacks something that its kind needs was told when it was read; nothing can be built of it.
        bool whole = variant.Items.Values.All(i => i.IsWhole);
        foreach (BookCheck check in checks.Where(c => whole || BookChecks.Default.Contains(c)))
        {
            DiagnosticList own = [];
            check(variant, own);
            found.AddRange(own);
        }

        return notes;
    }
}
