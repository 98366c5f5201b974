using System.Text.Json;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Book.Scaffold;
using Sightglass.Book.Tests.Hostile;
using Sightglass.Book.Tests.Schema;
using Sightglass.Book.Tests.Sheets;
using Sightglass.Plant.Kinds;

namespace Sightglass.Book.Tests.Scaffold;

public class BookScaffoldTests
{
    [Fact]
    public void New_WithThePlantsKinds_ReadsWithoutAFinding() => Assert.Equal("Kestrel", Read("Kestrel", KindLibrary.Catalog).Title);

    [Fact]
    public void New_WithTheTestsKinds_ReadsWithoutAFinding() => Assert.Equal(3, Read("Kestrel", TestKinds.Catalog).Items.Count);

    [Theory]
    [InlineData("A: \"B\" \\ #1 {[", "A: \"B\" \\ #1 {[")]
    [InlineData("two\nlines\tand\u0007bell", "two lines and bell")]
    [InlineData("null", "null")]
    [InlineData("Größe 🚂", "Größe 🚂")]
    public void New_AnyTitle_IsKeptInOneLine(string title, string kept) => Assert.Equal(kept, Read(title, TestKinds.Catalog).Title);

    [Fact]
    public void New_Files_FitTheirSchema()
    {
        foreach (SourceText file in BookScaffold.New("Kestrel", KindLibrary.Catalog).Where(f => f.Path.EndsWith(".yaml", StringComparison.Ordinal)))
        {
            Assert.StartsWith("# yaml-language-server: $schema=book.schema.json\n", file.Text, StringComparison.Ordinal);
            Assert.All(YamlAsJson.Documents(file.Text), d => Assert.True(Schemas.Of(KindLibrary.Catalog).Evaluate(JsonSerializer.SerializeToElement(d)).IsValid));
        }
    }

    /// <summary>The example that stands in comments reads when its marks are taken away.</summary>
    [Fact]
    public void New_ExampleInComments_Reads()
    {
        ClassBook book = Read("Kestrel", KindLibrary.Catalog, t => t[..t.IndexOf("# What stands", StringComparison.Ordinal)] + "---\n"
            + t[t.IndexOf("# assemblies:", StringComparison.Ordinal)..].Replace("\n# ", "\n", StringComparison.Ordinal)[2..]);
        Assert.Equal(["aft drain", "aft trap", "forward drain", "forward trap", "hole", "pipe", "sight glass", "tank"], book.Items.Keys);
    }

    /// <summary>Written to a folder and read from there.</summary>
    private static ClassBook Read(string title, KindCatalog kinds, Func<string, string>? change = null)
    {
        using TemporaryFolder folder = new();
        foreach (SourceText file in BookScaffold.New(title, kinds))
        {
            folder.Write(file.Path, file.Path == "items.yaml" && change is not null ? change(file.Text) : file.Text);
        }

        DiagnosticList found = [];
        ClassBook? book = BookReader.Read(folder.Path, kinds, found);
        Assert.Empty(found);
        return book!;
    }
}
