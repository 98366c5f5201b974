using CsCheck;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Changes;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Samples;
using Sightglass.Book.Tests.Sheets;
using Sightglass.Plant.Kinds;
using Sightglass.Tests.Support;

namespace Sightglass.Book.Tests.Changes;

public sealed class BookChangeProperties
{
    private static readonly string[] s_texts = ["label", "for", "normal", "know", "operate", "repair"];

    /// <summary>Words with everything in them that YAML could take for something else.</summary>
    private static readonly Gen<string> s_hostile = Gen.Frequency(
        (3, One("a", "the valve", "12", "yes", "null", "~", "true", "1e3", "2020-01-01", "0x1F", "{name}", "${a}", "é ü ß", "阀门", "😀", "“so”")),
        (3, One(": ", " #", "- ", "-", "?", "!", "&a", "*a", "%", "@", "`", "|", ">", "'", "\"", "\\", "{", "}", "[", "]", ",", "---", "...", "<<")),
        (1, One("\n", "\n\n", "\t", "  ", "\u00A0", "\u2028", "\u0085", "\u200B", "\uFEFF", "\u0007", "\r\n")),
        (2, Gen.Char['a', 'z'].Array[1, 40].Select(c => new string(c))))
        .Array[1, 24].Select(parts => string.Join(" ", parts).Trim()).Where(t => t.ReplaceLineEndings("\n").Trim().Length > 0);

    private static readonly BookText s_sample = new([new SourceText("heron.yaml", SampleBook.Text)], [], TestKinds.Catalog);

    [Fact]
    public void Plan_AnyTextOfTheSample_ChangesItAndNothingElse() => Changes(s_sample).Holds(c => Holds(s_sample, c.Change, c.Pick), iter: 150);

    /// <summary>The demo has assemblies, modifications of road numbers, cars, comments, texts of all styles.</summary>
    [Fact]
    public void Plan_AnyTextOfTheDemo_ChangesItAndNothingElse()
    {
        BookText demo = new BookChanges(RepositoryBook("curlew"), KindLibrary.Catalog).Read();
        Changes(demo).Holds(c => Holds(demo, c.Change, c.Pick), iter: 4);
    }

    private static Gen<T> One<T>(params T[] all) => Gen.Int[0, all.Length - 1].Select(i => all[i]);

    private static Gen<(BookChange Change, int Pick)> Changes(BookText text)
    {
        ClassBook book = text.Book!;
        string?[] numbers = [null, null, .. book.RoadNumbers.Keys];
        string?[] cars = [null, null, null, .. book.Cars.Keys];
        return Gen.Select(Gen.Int[0, int.MaxValue / 2], One(s_texts), s_hostile, One(numbers), One(cars), (at, property, becomes, number, car) =>
        {
            ClassBook owner = car is not null ? book.Cars[car] : number is not null ? book.For(number) : book;
            string[] items = [.. owner.Items.Keys], places = [.. owner.Places.Keys];
            bool place = at % 7 == 0 && (car is not null || number is null);
            BookChange change = place ? new(places[at % places.Length], "text", becomes) : new(items[at % items.Length], property, becomes);
            return (change with { Car = car, RoadNumber = car is null && !place ? number : null }, at);
        });
    }

    private static void Holds(BookText text, BookChange change, int pick)
    {
        string was = text.Current(change)!;
        ChangePlan plan = text.Plan(change with { Was = was });
        string wanted = change.Becomes!.ReplaceLineEndings("\n").Trim();
        if (wanted == was)
        {
            return;
        }

        Assert.True(plan.File is not null, $"{change}: {plan.Refused}");
        BookText after = text.With(plan.File);
        Assert.Equal(wanted, after.Current(change));
        string key = change switch { { Property: "text" } => "Text", { Property: "for" } => "Purpose", { Property: "know" or "operate" or "repair" } p => $"Texts.{Capital(p.Property)}", var p => Capital(p.Property) };
        string[] differ = ModelText.Differences(text.Book!, after.Book!);
        Assert.All(differ, d => Assert.True(
            (d.Contains($"/{change.Target}.{key}: ", StringComparison.Ordinal) && d.EndsWith($" → {wanted}", StringComparison.Ordinal))
                || (change.RoadNumber is { } n && d.StartsWith($".RoadNumbers/{n}.", StringComparison.Ordinal)),
            d));
        Assert.Contains(differ, d => d.EndsWith($" → {wanted}", StringComparison.Ordinal));
        if (pick % 3 == 0 && was.Length > 0)
        {
            // And back again: the model is what it was.
            ChangePlan back = after.Plan(change with { Becomes = was, Was = wanted });
            Assert.True(back.File is not null, back.Refused);
            Assert.All(ModelText.Differences(text.Book!, after.With(back.File).Book!), d => Assert.Contains(".RoadNumbers/", d, StringComparison.Ordinal));
        }
    }

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];

    private static string RepositoryBook(string name, [System.Runtime.CompilerServices.CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "books", name));
}
