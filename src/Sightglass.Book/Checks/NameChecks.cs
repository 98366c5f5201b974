using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;

namespace Sightglass.Book.Checks;

/// <summary>Formulas and cards speak of items, facts and signs by name alone: no two of them may share one.</summary>
internal static class NameChecks
{
    public static void Run(ClassBook book, DiagnosticList found)
    {
        foreach (Fact fact in book.Facts.Values)
        {
            Compare(fact.Name, "the fact", fact.Span, book, found);
        }

        foreach (Sign sign in book.Signs.Values)
        {
            Compare(sign.Name, "the sign", sign.Span, book, found);
            if (book.Facts.TryGetValue(sign.Name, out Fact? fact))
            {
                found.Add(BookMessages.TwoMeanings(sign.Span, sign.Name, "the sign", "a fact", fact.Span));
            }
        }

        foreach (Item item in book.Items.Values.Where(i => WorldInput.Find(i.Name) is not null))
        {
            found.Add(BookMessages.TwoMeanings(item.Span, item.Name, "the item", "a quantity of the surroundings", Span.None));
        }
    }

    private static void Compare(string name, string what, Span span, ClassBook book, DiagnosticList found)
    {
        if (book.Items.TryGetValue(name, out Item? item))
        {
            found.Add(BookMessages.TwoMeanings(span, name, what, "an item", item.Span));
        }
    }
}
