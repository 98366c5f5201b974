using System.Text.Json;
using Json.Schema;
using Sightglass.Book.Schema;
using Sightglass.Book.Tests.Schema;

namespace Sightglass.Book.Tests.Committed;

/// <summary>docs/schemas/consist.schema.json, and the train of the guide.</summary>
public class CommittedConsistTests
{
    [Fact]
    public void Schema_InDocs_IsGenerated() => RepositoryFile.AssertIs("docs/schemas/consist.schema.json", ConsistSchema.Write());

    [Fact]
    public void Train_OfTheGuide_FitsTheSchema()
    {
        JsonSchema schema = JsonSchema.FromText(ConsistSchema.Write());
        foreach (var document in YamlAsJson.Documents(File.ReadAllText(RepositoryFile.PathOf("docs/guide/a-train.yaml"))))
        {
            EvaluationResults results = schema.Evaluate(JsonSerializer.SerializeToElement(document), new EvaluationOptions { OutputFormat = OutputFormat.List });
            Assert.True(results.IsValid, string.Join("; ", (results.Details ?? []).Where(d => d.Errors is not null).Select(d => $"{d.InstanceLocation} {string.Join(", ", d.Errors!.Values)}")));
        }
    }
}
