using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Tests;

/// <summary>Small books in memory and their plans.</summary>
internal static class Plants
{
    public const string Head = """
        book: Small
        edition: "1"
        notice: Invented.
        length: 10 m
        width: 2 m

        """;

    /// <summary>The plan, and what was found wrong with it. A book that cannot even be read is a fault of the test.</summary>
    public static Plan? Compile(string yaml, out DiagnosticList found)
    {
        found = [];
        ClassBook? book = BookReader.Read([new SourceText("book.yaml", Head + yaml)], [], KindLibrary.Catalog, found);
        Assert.True(book is not null, string.Join('\n', found));
        return PlanCompiler.Compile(book, found);
    }

    public static Plan Compile(string yaml)
    {
        Plan? plan = Compile(yaml, out DiagnosticList found);
        Assert.True(plan is not null, string.Join('\n', found));
        return plan;
    }
}
