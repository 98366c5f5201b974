using System.Collections.Immutable;
using Sightglass.Book.Assemblies;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads a class of cars: a small book within the book, with the book's assemblies, roles, protections and systems.</summary>
/// <param name="book">What is already read of the book.</param>
/// <param name="assemblies">The book's.</param>
/// <param name="used">Takes the names of assemblies that are used.</param>
internal sealed class CarReader(ClassBook book, ImmutableDictionary<string, Assembly> assemblies, ISet<string> used)
{
    /// <summary>The car with the names that must be declared in it or in the book; null where its body is no map at all.</summary>
    public CarItems? Read(YamlEntry entry, ReadContext context)
    {
        ReadContext own = context.Within();
        Sections sections = new(SectionList.Car(entry.Name), own);
        if (MapReader.AsMap(entry.Value, $"the car `{entry.Name}`", own) is not { } body)
        {
            return null;
        }

        sections.Add(body);
        sections.Close();
        MapReader head = new(sections.Head, entry.Key.Span, $"the car `{entry.Name}`", own);
        PartReader parts = new(sections, own);
        ItemBodies bodies = new(sections["items"], assemblies, used, own);
        ClassBook car = parts.Into(
            book with
            {
                Title = entry.Name,
                Text = head.Text("text"),
                Length = head.Positive("length", Basics.Quantities.Dimension.Metre, 25),
                Width = head.Positive("width", Basics.Quantities.Dimension.Metre, book.Width),
                CarClass = entry.Name,
                Hauling = HaulingReader.Read(head.Take("hauling"), entry.Key.Span, own),
                MakingUp = null,
                Cars = ImmutableSortedDictionary<string, ClassBook>.Empty,
                RoadNumbers = ImmutableSortedDictionary<string, RoadNumber>.Empty,
                Measures = ImmutableSortedDictionary<string, Measure>.Empty,
                CardTexts = [],
            },
            bodies);
        return new(car, own.References);
    }
}
