namespace Sightglass.Architecture.Tests;

public sealed class FileShapeTests
{
    private const int LongestFile = 400;

    /// <summary>
    /// Files that hold a family: one noun with the records and enumerations that only make sense beside it. A new entry says why.
    /// </summary>
    private static readonly Dictionary<string, string> s_families = new(StringComparer.Ordinal)
    {
        ["src/Sightglass.Basics/Diagnostics/Diagnostic.cs"] = "its severity",
        ["src/Sightglass.Basics/Formulas/INameScope.cs"] = "the name it resolves to",
        ["src/Sightglass.Plant/Plans/Binding.cs"] = "the function that binds",
        ["src/Sightglass.Plant/Plans/StoreEnd.cs"] = "its sorts",
        ["src/Sightglass.Plant/Plans/SwitchRule.cs"] = "its condition",
    };

    [Fact]
    public void Files_OfSources_AreShort()
    {
        IEnumerable<string> tooLong = Written("src")
            .Select(p => (Path: p, Lines: RepositoryFiles.Read(p).Count(c => c == '\n')))
            .Where(f => f.Lines > LongestFile)
            .Select(f => $"{f.Path}: {f.Lines} lines");
        Assert.Empty(tooLong);
    }

    [Fact]
    public void Files_OfSources_HoldOneTypeNamedAsTheFile()
    {
        IEnumerable<string> wrong =
            from path in Written("src")
            where path.EndsWith(".cs", StringComparison.Ordinal) && !s_families.ContainsKey(path)
            let types = CodeText.TopLevelTypes(RepositoryFiles.Read(path)).ToArray()
            where types.Length > 1 || (types.Length == 1 && types[0] != NameOf(path))
            select $"{path}: {string.Join(", ", types)}";
        Assert.Empty(wrong);
    }

    /// <summary>What the format check of whitespace and the build's rules leave: System first, then by letter, static ones and other names last.</summary>
    [Fact]
    public void Usings_OfAllCode_StandInOrder()
    {
        IEnumerable<string> wrong = new[] { "src", "tests", "bench" }.SelectMany(RepositoryFiles.Code)
            .Where(p => p.EndsWith(".cs", StringComparison.Ordinal))
            .Where(p => CodeText.Usings(RepositoryFiles.Read(p)).ToArray() is var usings && !usings.SequenceEqual(usings.OrderBy(CodeText.UsingOrder).ThenBy(CodeText.UsingName, StringComparer.OrdinalIgnoreCase)));
        Assert.Empty(wrong);
    }

    [Theory]
    [InlineData("using System.Text;\nusing System;", false)]
    [InlineData("using Alpha;\nusing System;", false)]
    [InlineData("using System;\nusing Alpha;\nusing static System.Math;\nusing Z = System.Int32;", true)]
    public void UsingOrder_OfLines_IsToldFromAnother(string source, bool inOrder)
    {
        string[] usings = [.. CodeText.Usings(source)];
        Assert.Equal(inOrder, usings.SequenceEqual(usings.OrderBy(CodeText.UsingOrder).ThenBy(CodeText.UsingName, StringComparer.OrdinalIgnoreCase)));
    }

    [Fact]
    public void Families_Listed_StillNeedIt() =>
        Assert.Empty(s_families.Keys.Where(p => !RepositoryFiles.All.Contains(p) || CodeText.TopLevelTypes(RepositoryFiles.Read(p)).Count() < 2));

    [Fact]
    public void TopLevelTypes_OfASource_AreFoundWithoutNestedOnesAndProse()
    {
        const string Source = """
            namespace A;
            // public class Not
            public sealed record One(int X);
            internal readonly record struct Two
            {
                public sealed class Nested;
            }
            public delegate int Three(int a);
            [Flags]
            public enum Four { }
            """;
        Assert.Equal(["One", "Two", "Three", "Four"], CodeText.TopLevelTypes(Source));
    }

    /// <summary><c>Pipe.Laws.cs</c> is a part of <c>Pipe</c>; <c>Strip.razor.cs</c> of <c>Strip</c>.</summary>
    private static string NameOf(string path) => Path.GetFileName(path).Split('.')[0];

    /// <summary>Migrations are written by a tool.</summary>
    private static IEnumerable<string> Written(string folder) => RepositoryFiles.Code(folder).Where(p => !p.Contains("/Migrations/", StringComparison.Ordinal));
}
