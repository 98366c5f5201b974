using System.Runtime.CompilerServices;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Paper.Document;
using Sightglass.Paper.Papers;
using Sightglass.Paper.Pdf;
using Sightglass.Paper.Photos;
using Sightglass.Plant.Kinds;
using Sightglass.Training.Debrief;
using Sightglass.Training.Differences;
using Sightglass.Training.Lessons;
using Sightglass.Training.Routes;

namespace Sightglass.Paper.Tests;

/// <summary>Papers of the demo book, each made once.</summary>
internal static class Papers
{
    public const string Address = "http://192.0.2.7:5000/papers?card=drain-water";

    private static readonly Lazy<ClassBook> s_book = new(Read);
    private static readonly Lazy<DebriefFilm> s_debrief = new(() => DebriefRuns.Run(Book));
    private static readonly Dictionary<string, Lazy<byte[]>> s_files = Names.ToDictionary(n => n, n => new Lazy<byte[]>(() => Write(n)), StringComparer.Ordinal);

    public static ClassBook Book => s_book.Value;

    public static IReadOnlyList<string> Names => ["card", "card-folded", "card-long-folded", "card-large", "lesson", "lesson-large", "lesson-a4", "system-fuel", "system-fuel-4107", "system-air", "differences", "habits", "walk", "walk-tabloid", "debrief", "debrief-a4"];

    public static byte[] Pdf(string name) => s_files[name].Value;

    public static PaperDocument Of(string name) => Bare(name) with { Printed = new DateOnly(2026, 11, 26) };

    public static PaperSheet Sheet(string name) => name switch
    {
        "card" => PaperSheet.A6,
        "card-folded" or "card-long-folded" => PaperSheet.FoldedLetter,
        "card-large" or "lesson-large" => PaperSheet.Letter with { Large = true },
        "lesson-a4" or "debrief-a4" => PaperSheet.A4,
        "walk" => PaperSheet.A2,
        "walk-tabloid" => PaperSheet.Tabloid,
        _ => PaperSheet.Letter,
    };

    public static byte[] Write(string name) => PdfPaper.Write(Of(name), Sheet(name)).Bytes;

    private static PaperDocument Bare(string name) => name.Split('-')[0] switch
    {
        "card" => Card(name.Contains("long", StringComparison.Ordinal) ? "brake-test-before-departure" : name == "card-psi" ? "brake-pipe-leakage-test" : "drain-water"),
        "lesson" => Lesson("fuel for a crew", Sheet(name)),
        "system" when name == "system-fuel-4107" => SystemPaper.Of(Book.For("4107"), "fuel", null, Sheet(name), Album("4107")),
        "system" => SystemPaper.Of(Book, name == "system-fuel" ? "fuel" : "brake air", null, Sheet(name), Album(null)),
        "differences" => DifferencePaper.Of(Book, Book.For("4104"), MachineStatus.Of(Book.For("4104"), new DateOnly(2026, 11, 26), [])),
        "habits" => DifferencePaper.Of(Book.For("4112"), Book.Habits.Values.First(), MachineStatus.Of(Book.For("4112"), new DateOnly(2026, 11, 26), [])),
        "debrief" => DebriefPaper.Of(s_debrief.Value, DebriefRuns.Facts),
        _ => WalkPaper.Of(Book, "http://192.0.2.7:5000/walk", album: Album(null)),
    };

    private static PaperDocument Card(string name)
    {
        CardStamp stamp = new(["leaking compartment: tried by simulation in 512 cases: 500 ended well, 12 stopped safely, 0 failed, 0 undecided."], "Curlew, edition 1, book 0123456789abcdef, seed 1.", new DateOnly(2026, 11, 26), "A. Instructor");
        return CardPaper.Of(ReadCard(name), stamp, Book, Address);
    }

    public static Card ReadCard(string name)
    {
        SourceText text = Book.CardTexts.Single(t => Path.GetFileNameWithoutExtension(t.Path) == name);
        return CardReader.Read(text, Book.For(text), [])!;
    }

    private static PaperDocument Lesson(string purpose, PaperSheet sheet)
    {
        LessonRequest request = new(RoutePurposes.Find(purpose, Book)!, 10, Depth.Operate) { Audience = "conductor", Stations = 2, Kit = Book.Walks[purpose].Kit };
        return LessonPaper.Of(LessonPlanner.Plan(Book, request)!, null, sheet, Album(null));
    }

    public static PaperAlbum Album(string? number) => PaperAlbum.Of(number is null ? Book : Book.For(number), BookFolder);

    public static string BookFolder => Path.Combine(Root(), "books", "curlew");

    private static ClassBook Read()
    {
        DiagnosticList found = [];
        return BookReader.Read(BookFolder, KindLibrary.Catalog, found)!;
    }

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
