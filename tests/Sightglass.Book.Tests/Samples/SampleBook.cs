using System.Runtime.CompilerServices;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Sheets;

namespace Sightglass.Book.Tests.Samples;

/// <summary>The good book of the tests and short ways to read texts.</summary>
internal static class SampleBook
{
    public static string Text { get; } = File.ReadAllText(Path.Combine(Folder(), "heron.yaml"));

    public static (ClassBook? Book, DiagnosticList Found) Read(params string[] files)
    {
        DiagnosticList found = [];
        SourceText[] sources = [.. files.Select((t, i) => new SourceText(i == 0 ? "book.yaml" : $"book{i + 1}.yaml", t))];
        return (BookReader.Read(sources, [], TestKinds.Catalog, found), found);
    }

    /// <summary>Reads a book that must be good.</summary>
    public static ClassBook Good(params string[] files)
    {
        (ClassBook? book, DiagnosticList found) = Read(files);
        Assert.True(book is not null, string.Join('\n', found));
        return book;
    }

    private static string Folder([CallerFilePath] string here = "") => Path.GetDirectoryName(here)!;
}
