using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using Json.Schema;
using Sightglass.Cli.Output;

namespace Sightglass.Cli.Tests;

/// <summary>Every answer in JSON keeps to its schema under docs/schemas, and the schemas are those of the answers' types.</summary>
public sealed class AnswerSchemaTests
{
    public static TheoryData<string> Names => ["check-answer", "walk-answer", "route-answer", "lesson-answer", "differences-answer", "bet-answer", "bet-list-answer", "drill-answer", "drill-list-answer", "drill-check-answer", "recording-answer", "recording-list-answer", "calc-answer", "calc-list-answer", "haul-answer", "haul-list-answer", "drawn-answer", "run-answer", "try-answer", "cases-answer", "format-answer", "new-answer", "serving-answer", "rules-answer", "walk-down-answer", "proposals-answer", "paper-answer", "train-answer", "train-list-answer"];

    [Theory]
    [MemberData(nameof(Names))]
    public void Schema_InTheDocs_IsThatOfTheType(string name)
    {
        string generated = Generate(name);
        string path = Path.Combine(Call.Root, "docs", "schemas", name + ".json");
        if (Environment.GetEnvironmentVariable("SIGHTGLASS_ACCEPT") == "1")
        {
            File.WriteAllText(path, generated);
        }

        Assert.Equal(generated, File.ReadAllText(path));
    }

    [Theory]
    [InlineData("check-answer", "check", "books/smallest", "--json")]
    [InlineData("walk-answer", "walk", "--json")]
    [InlineData("route-answer", "route", "fuel", "--people", "10", "--json")]
    [InlineData("lesson-answer", "lesson", "fuel", "--stations", "2", "--json")]
    [InlineData("bet-answer", "bet", "twenty seconds later", "--json")]
    [InlineData("bet-list-answer", "bet", "--json")]
    [InlineData("drill-list-answer", "drill", "--json")]
    [InlineData("drill-answer", "drill", "the alerter was not answered", "--card", "reset-a-penalty", "--json")]
    [InlineData("drill-check-answer", "drill", "the alerter was not answered", "--check", "--cases", "2", "--shortcuts", "--json")]
    [InlineData("recording-list-answer", "recording", "--json")]
    [InlineData("recording-answer", "recording", "stopped on the grade", "--rows", "2", "--json")]
    [InlineData("calc-list-answer", "calc", "--json")]
    [InlineData("calc-answer", "calc", "horn", "level = 100", "distance = 400 ft", "--json")]
    [InlineData("haul-list-answer", "haul", "--json")]
    [InlineData("haul-answer", "haul", "Saltmarsh to Windlass", "--train", "local train", "--stop-at", "12 mi", "--json")]
    [InlineData("differences-answer", "differences", "--road-number", "4104", "--json")]
    [InlineData("run-answer", "run", "--book", "books/smallest", "--json")]
    [InlineData("try-answer", "try", "empty-a-leaking-compartment-draft", "-s", "leaking compartment", "--cases", "8", "--json")]
    [InlineData("try-answer", "try", "reset-a-penalty", "--cases", "4", "--left-out", "--json")]
    [InlineData("cases-answer", "try", "empty-a-leaking-compartment-draft", "-s", "leaking compartment", "--case", "3", "--json")]
    [InlineData("new-answer", "new", "NEW", "--json")]
    [InlineData("rules-answer", "rules", "--json")]
    [InlineData("walk-down-answer", "walkdown", "--data", "NEW", "--json")]
    [InlineData("proposals-answer", "proposals", "--data", "NEW", "--json")]
    [InlineData("format-answer", "format", "--check", "--json")]
    [InlineData("train-answer", "train", "docs/guide/a-train.yaml", "--json")]
    [InlineData("train-list-answer", "train", "--json")]
    [InlineData("paper-answer", "paper", "system", "fuel", "--pdf", "NEW", "--json")]
    public async Task Answer_OfAVerb_KeepsToItsSchema(string name, params string[] arguments)
    {
        using ScratchFolder scratch = new();
        Call call = await Call.Of([.. arguments.Select(a => a == "NEW" ? scratch.At("new") : a)]);
        JsonSchema schema = JsonSchema.FromText(Generate(name));
        EvaluationResults results = schema.Evaluate(JsonDocument.Parse(call.Output).RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(results.IsValid, string.Join('\n', (results.Details ?? []).Where(d => d.Errors is not null).SelectMany(d => d.Errors!.Values)));
    }

    /// <summary>A script finds the same keys and names whatever language is asked for; sentences follow it.</summary>
    [Theory]
    [InlineData("arrange", "lesson", "fuel for a crew", "--stations", "2", "--json")]
    [InlineData("findings", "train", "night mail", "--json")]
    [InlineData("story", "run", "leaking compartment", "--for", "2min", "--json")]
    public async Task Answer_InAnotherLanguage_HasTheSameKeysAndNames(string sentences, params string[] arguments)
    {
        JsonElement english = JsonDocument.Parse((await Call.Of(arguments)).Output).RootElement, spanish = JsonDocument.Parse((await Call.Of([.. arguments, "--language", "es"])).Output).RootElement;
        Assert.Equal(KeysAndNames(english), KeysAndNames(spanish));
        Assert.NotEqual(english.GetProperty(sentences).ToString(), spanish.GetProperty(sentences).ToString());
        Assert.All(KeysAndNames(spanish).Select(k => k.Split('=')[0]), k => Assert.All(k, c => Assert.True(char.IsAsciiLetterOrDigit(c) || c is '_' or '/')));
    }

    private static IEnumerable<string> KeysAndNames(JsonElement of, string at = "") => of.ValueKind switch
    {
        JsonValueKind.Object => of.EnumerateObject().SelectMany(p => KeysAndNames(p.Value, $"{at}/{p.Name}").Prepend($"{at}/{p.Name}")),
        JsonValueKind.Array => of.EnumerateArray().SelectMany(e => KeysAndNames(e, at)),
        JsonValueKind.String when at.Split('/')[^1] is "place" or "item" or "purpose" or "word" or "situation" or "depth" => [$"{at}={of.GetString()}"],
        _ => [],
    };

    private static string Generate(string name)
    {
        Type type = typeof(CheckAnswer).Assembly.GetTypes().Single(t => t.Name == string.Concat(name.Split('-').Select(w => char.ToUpperInvariant(w[0]) + w[1..])));
        JsonNode schema = Answer.Options.GetJsonSchemaAsNode(type, new JsonSchemaExporterOptions { TreatNullObliviousAsNonNullable = true });
        JsonObject titled = new() { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["title"] = name };
        foreach (KeyValuePair<string, JsonNode?> part in schema.AsObject().ToArray())
        {
            titled[part.Key] = part.Value?.DeepClone();
        }

        return titled.ToJsonString(Answer.Options) + "\n";
    }
}
