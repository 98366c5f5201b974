using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Checks;

/// <summary>Runs the checks on the class, on every road number with modifications, on every class of cars and on every train.</summary>
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
        foreach (RoadNumberItems own in variants.Numbers.OrderBy(n => n.Number.Number, StringComparer.Ordinal))
        {
            ClassBook variant = book with { Items = own.Items, RoadNumberInUse = own.Number.Number };
            AddOn($"road number {own.Number.Number}", One(variant, [.. references.Where(r => !own.Changed.Contains(r.Owner)), .. own.References]));
        }

        foreach (CarItems own in variants.Cars)
        {
            context.Found.AddRange(One(own.Car, own.References));
        }

        // What is wrong with a vehicle would be told again for every one that is coupled.
        bool sound = !context.Found.HasErrors;
        foreach (TrainItems own in variants.Trains)
        {
            DiagnosticList notes = [];
            new ReferenceCheck(own.Coupled, context.Found.Apart(notes)).Run(own.Context.References);
            context.Found.AddRange(notes);
            AddOn($"train {own.Coupled.TrainInUse}", sound ? Plant(own.Coupled) : []);
        }
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
