using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Readers;

namespace Sightglass.Book.Checks;

/// <summary>Runs the checks on the class and on every road number.</summary>
internal sealed class CheckRun(ClassBook book, ReadContext context, ImmutableArray<BookCheck> checks)
{
    public void Run()
    {
        One(book, context.References);
        foreach (RoadNumber number in book.RoadNumbers.Values.Where(n => n.Modifications.Length > 0))
        {
            ReadContext own = new(context.Found, context.Kinds);
            ClassBook variant = book with { Items = book.Bodies!.ReadFor(number, own), RoadNumberInUse = number.Number };
            One(variant, own.References);
        }
    }

    private void One(ClassBook variant, ImmutableArray<NameReference> references)
    {
        // Where text could not be read, names seem to be missing that are not.
        if (context.Found.AnyDamage)
        {
            return;
        }

        new ReferenceCheck(variant, context.Found).Run(references);
        if (variant.Items.Values.Any(i => i.IsKindUnknown))
        {
            return;
        }

        foreach (BookCheck check in checks)
        {
            DiagnosticList notes = [];
            check(variant, notes);
            context.Found.AddRange(notes);
        }
    }
}
