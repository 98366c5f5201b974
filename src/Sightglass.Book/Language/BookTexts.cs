using Sightglass.Book.Model;

namespace Sightglass.Book.Language;

/// <summary>All texts of a book that people read, each once, in the order in which they are met. Those of cards stand in the cards.</summary>
public static class BookTexts
{
    public static IEnumerable<ReadText> Of(ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return All(book).Where(t => t.Text.Any(char.IsLetter)).DistinctBy(t => t.Text);
    }

    /// <summary>Names that the program puts together for what is coupled in the book's trains.</summary>
    public static IEnumerable<ReadText> OfTrains(ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Trains.Keys.Select(book.Coupled).SelectMany(t => t.Items.Values.Select(i => Name(i.Name, i.Span)).Concat(t.Facts.Values.Select(f => Name(f.Name, f.Span))).Concat(t.Signs.Values.Select(s => Name(s.Name, s.Span))))
            .DistinctBy(t => t.Text);
    }

    private static IEnumerable<ReadText> All(ClassBook book) =>
        Head(book)
            .Concat(Vehicle(book))
            .Concat(book.RoadNumbers.Keys.SelectMany(n => book.For(n).ItemsInOrder.SelectMany(Item)))
            .Concat(book.RoadNumbers.Values.SelectMany(n => n.Modifications).SelectMany(m => new[] { Prose(m.Name, m.Span), Prose(m.Text, m.Span) }))
            .Concat(book.Cars.Values.SelectMany(c => Vehicle(c).Prepend(Prose(c.Text, default)).Prepend(Name(c.Title, default))))
            .Concat(book.Trains.Values.SelectMany(t => t.Measures.Select(m => Name(m.Name, m.Span)).Prepend(Prose(t.Text, t.Span)).Prepend(Name(t.Name, t.Span))))
            .Concat(Classroom(book));

    private static IEnumerable<ReadText> Head(ClassBook book)
    {
        yield return Prose(book.Title, default);
        yield return Prose(book.Railroad, default);
        yield return Prose(book.Notice, default);
        foreach (Role r in book.Roles.Values)
        {
            yield return Name(r.Name, r.Span);
            yield return Prose(r.Text, r.Span);
        }

        foreach (Protection p in book.Protections.Values)
        {
            yield return Name(p.Name, p.Span);
            yield return Prose(p.Text, p.Span);
        }

        foreach (SystemSheet s in book.Systems.Values)
        {
            yield return Name(s.Name, s.Span);
            yield return Prose(s.Text, s.Span);
        }

        foreach (Measure m in book.Measures.Values)
        {
            yield return Name(m.Name, m.Span);
        }

        foreach (ReadText t in book.MakingUp is { } made ? made.Lines.Select(l => Prose(l.Lost, l.Span)).Concat(made.Commands.Select(c => Prose(c.Name, c.Span))).Prepend(Prose(made.Text, made.Span)) : [])
        {
            yield return t;
        }
    }

    private static IEnumerable<ReadText> Vehicle(ClassBook book)
    {
        foreach (Place p in book.PlacesInOrder)
        {
            yield return Name(p.Name, p.Span);
            yield return Prose(p.Text, p.Span);
        }

        foreach (ReadText t in book.Legs.Select(l => Prose(l.By, l.Span)).Concat(book.ItemsInOrder.SelectMany(Item)))
        {
            yield return t;
        }

        foreach (Fact f in book.FactsInOrder)
        {
            yield return Name(f.Name, f.Span);
            yield return Prose(f.Text, f.Span);
        }

        foreach (Sign s in book.Signs.Values.OrderBy(s => s.Span))
        {
            yield return Name(s.Name, s.Span);
        }

        foreach (Hazard h in book.HazardsInOrder)
        {
            yield return Name(h.Name, h.Span);
            yield return Prose(h.Caution.Text, h.Caution.Span);
        }

        foreach (CouplingEnd e in book.Ends.Values)
        {
            yield return Name(e.Name, e.Span);
            foreach (string line in e.Joins.Keys)
            {
                yield return Name(line, e.Span);
            }
        }
    }

    private static IEnumerable<ReadText> Item(Item i)
    {
        yield return Name(i.Name, i.Span);
        foreach (string text in new[] { i.Label, i.Purpose, i.Normal, i.Texts.Know, i.Texts.Operate, i.Texts.Repair, i.IfItFails })
        {
            yield return Prose(text, i.Span);
        }

        foreach (Caution c in i.Cautions)
        {
            yield return Prose(c.Text, c.Span);
        }

        foreach (Question q in i.Questions)
        {
            yield return Prose(q.Asked, q.Span);
            yield return Prose(q.Answer, q.Span);
        }

        foreach (string word in i.Positions.Except(i.Kind.Positions).Concat(i.Reading?.Words.Keys ?? []))
        {
            yield return new(BookTextSort.Word, word, i.Span);
        }
    }

    private static IEnumerable<ReadText> Classroom(ClassBook book)
    {
        foreach (Situation s in book.Situations.Values.OrderBy(s => s.Span))
        {
            yield return Name(s.Name, s.Span);
            yield return Prose(s.Text, s.Span);
        }

        foreach (Recording r in book.Recordings.Values.OrderBy(r => r.Span))
        {
            yield return Name(r.Name, r.Span);
            yield return Prose(r.Text, r.Span);
        }

        foreach (PlannedWalk w in book.Walks.Values.OrderBy(w => w.Span))
        {
            yield return Name(w.Name, w.Span);
            foreach (string text in w.Kit.Prepend(w.Text))
            {
                yield return Prose(text, w.Span);
            }
        }

        foreach (Bet b in book.Bets.Values.OrderBy(b => b.Span))
        {
            yield return Name(b.Name, b.Span);
            foreach (string text in b.Shows.Where(s => s.Name != s.Formula).Select(s => s.Name).Concat(b.Answers.Select(a => a.Says)).Prepend(b.Asks).Append(b.Because).Append(b.Lesson))
            {
                yield return Prose(text, b.Span);
            }
        }

        foreach (Drill d in book.Drills.Values.OrderBy(d => d.Span))
        {
            yield return Name(d.Name, d.Span);
            foreach (ReadText t in DrillTexts(d))
            {
                yield return t;
            }
        }

        foreach (Search s in book.Searches.Values.OrderBy(s => s.Span))
        {
            yield return Name(s.Name, s.Span);
            yield return Prose(s.Text, s.Span);
        }

        foreach (Route r in book.Routes.Values.OrderBy(r => r.Span))
        {
            yield return Name(r.Name, r.Span);
            yield return Prose(r.Text, r.Span);
            foreach (ReadText t in r.Places.Select(p => Name(p.Name, p.Span)).Concat(r.Rails.Select(c => Name(c.Name, c.Span))))
            {
                yield return t;
            }
        }

        foreach (Habit h in book.Habits.Values.OrderBy(h => h.Span))
        {
            yield return Name(h.Name, h.Span);
            foreach (string text in h.Lines.SelectMany(l => new[] { l.Was, l.Here, l.Hurts }).Prepend(h.Text))
            {
                yield return Prose(text, h.Span);
            }
        }

        foreach (Picture p in book.Pictures.Values.OrderBy(p => p.Span))
        {
            yield return Name(p.Name, p.Span);
            yield return Prose(p.Shows, p.Span);
        }
    }

    private static IEnumerable<ReadText> DrillTexts(Drill d)
    {
        string[] told = [d.Aim, d.StopWord, .. d.NotReal, .. d.Tools, .. d.Observe];
        return told.Select(t => Prose(t, d.Span))
            .Concat(d.Objectives.SelectMany(o => new[] { Name(o.Name, o.Span), Prose(o.Because, o.Span) }))
            .Concat(d.Reports.SelectMany(r => new[] { Name(r.Name, r.Span), Prose(r.Because, r.Span) }))
            .Concat(d.MustNever.SelectMany(n => new[] { Name(n.Name, n.Span), Prose(n.Because, n.Span) }))
            .Concat(d.Orders.SelectMany(o => new[] { Name(o.Name, o.Span), Prose(o.Because, o.Span) }))
            .Concat(d.Events.Select(e => Prose(e.Says, e.Span)))
            .Concat(d.Hints.Select(h => Prose(h.Says, h.Span)))
            .Concat(d.Asks.SelectMany(q => new[] { Prose(q.Asked, q.Span), Prose(q.Answer, q.Span) }));
    }

    private static ReadText Name(string text, Basics.Diagnostics.Span span) => new(BookTextSort.Name, text, span);

    private static ReadText Prose(string text, Basics.Diagnostics.Span span) => new(BookTextSort.Prose, text, span);
}
