using System.Runtime.CompilerServices;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;

namespace Sightglass.Tests.Support;

/// <summary>The books of the repository, read once.</summary>
internal static class Books
{
    private static readonly Lazy<Plan> s_smallest = new(() => Load("smallest"));
    private static readonly Lazy<Plan> s_curlew = new(() => Load("curlew"));
    private static readonly Lazy<Fleet> s_fleet = new(() => Fleet.Compile(Curlew.Book, [])!);

    public static Plan Smallest => s_smallest.Value;

    public static Plan Curlew => s_curlew.Value;

    /// <summary>All machines of the demo's class.</summary>
    public static Fleet CurlewFleet => s_fleet.Value;

    public static Plan Load(string name, string? roadNumber = null)
    {
        DiagnosticList found = new();
        ClassBook? book = BookReader.Read(FolderOf(name), KindLibrary.Catalog, found);
        Assert(found);
        book = roadNumber is null ? book! : book!.For(roadNumber);
        Plan? plan = PlanCompiler.Compile(book, found);
        Assert(found);
        return plan!;
    }

    /// <summary>Full path of a book's folder.</summary>
    public static string FolderOf(string name) => Path.Combine(Root(), "books", name);

    private static void Assert(DiagnosticList found)
    {
        if (found.HasErrors)
        {
            throw new InvalidOperationException(string.Join('\n', found.Where(d => d.Severity == Severity.Error)));
        }
    }

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
