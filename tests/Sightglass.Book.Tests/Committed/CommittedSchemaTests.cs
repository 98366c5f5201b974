using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Language;
using Sightglass.Book.Schema;
using Sightglass.Book.Tests.Schema;
using Sightglass.Plant.Kinds;

namespace Sightglass.Book.Tests.Committed;

/// <summary>docs/schemas/book.schema.json and the books of the repository, with the plant's own kinds.</summary>
public class CommittedSchemaTests
{
    private const string Name = "docs/schemas/book.schema.json";

    [Fact]
    public void Schema_InDocs_IsGeneratedFromTheKinds() => RepositoryFile.AssertIs(Name, BookSchema.Write(KindLibrary.Catalog));

    [Theory]
    [InlineData("books/smallest")]
    [InlineData("books/two-cabs")]
    [InlineData("books/curlew")]
    public void Book_OfTheRepository_IsReadAndFitsTheSchema(string folder)
    {
        DiagnosticList found = [];
        string path = RepositoryFile.PathOf(folder);
        Assert.True(BookReader.Read(path, KindLibrary.Catalog, found) is not null, string.Join('\n', found));
        JsonSchema schema = Schemas.Of(KindLibrary.Catalog);
        foreach (string file in Directory.EnumerateFiles(path, "*.yaml", SearchOption.AllDirectories).Where(f => !IsOfALanguage(path, f)))
        {
            foreach (JsonNode? document in YamlAsJson.Documents(File.ReadAllText(file)))
            {
                EvaluationResults results = schema.Evaluate(JsonSerializer.SerializeToElement(document), new EvaluationOptions { OutputFormat = OutputFormat.List });
                Assert.True(results.IsValid, $"{file}: {string.Join("; ", (results.Details ?? []).Where(d => d.Errors is not null).Take(5).Select(d => $"{d.InstanceLocation} {string.Join(", ", d.Errors!.Values)}"))}");
            }
        }
    }

    /// <summary>What a book says in other languages is no part of it, and has a reader of its own.</summary>
    private static bool IsOfALanguage(string folder, string file) => Path.GetRelativePath(folder, file).StartsWith(WordsReader.Folder + Path.DirectorySeparatorChar, StringComparison.Ordinal);
}
