using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Checks;

/// <summary>Runs the checks on the class and on every road number with modifications.</summary>
internal sealed class CheckRun(ClassBook book, ReadContext context, ImmutableArray<BookCheck> checks)
{
    public void Run(IEnumerable<RoadNumberItems> numbers)
    {
        // Where text could not be read, names seem to be missing that are not.
        if (context.Found.AnyDamage)
        {
            return;
        }

        ImmutableArray<NameReference> references = context.References;
        context.Found.AddRange(One(book, references));
        foreach (RoadNumberItems own in numbers.OrderBy(n => n.Number.Number, StringComparer.Ordinal))
        {
            ClassBook variant = book with { Items = own.Items, RoadNumberInUse = own.Number.Number };
            foreach (Diagnostic d in One(variant, [.. references.Where(r => !own.Changed.Contains(r.Owner)), .. own.References]))
            {
                context.Found.AddOn(own.Number.Number, d);
            }
        }
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

        foreach (BookCheck check in checks)
        {
            DiagnosticList own = [];
            check(variant, own);
            found.AddRange(own);
        }

        return notes;
    }
}
