using System.Text.Json;

namespace Sightglass.Cli.Tests;

public sealed class TryVerbTests
{
    private static readonly string[] s_draft = ["try", "empty-a-leaking-compartment-draft", "-s", "leaking compartment"];

    [Fact]
    public async Task Try_InAnyOrderOnAnyThreads_WritesTheSameOutcomes()
    {
        string forwards = await Outcomes("--threads", "1");
        Assert.Equal(49, forwards.Trim().Split('\n').Length);
        Assert.Equal(forwards, await Outcomes("--threads", "2", "--backwards"));
        Assert.NotEqual(forwards, await Outcomes("--seed", "2"));
    }

    [Fact]
    public async Task Try_OneCase_EndsAsInTheSweep()
    {
        string row = (await Outcomes()).Split('\n')[1 + 17];
        Call call = await Call.Of([.. s_draft, "--case", "17", "--json"]);
        JsonElement one = JsonDocument.Parse(call.Output).RootElement.GetProperty("cases")[0];
        Assert.EndsWith(one.GetProperty("hash").GetString()!, row, StringComparison.Ordinal);
        Assert.Contains($",{one.GetProperty("outcome").GetString()},", row, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_TheSameCase_HasTheHashOfTheTrial()
    {
        Call tried = await Call.Of([.. s_draft, "--case", "5", "--json"]);
        Call run = await Call.Of("run", "leaking compartment", "--card", "empty-a-leaking-compartment-draft", "--case", "5", "--json");
        string Outcome(string text, Func<JsonElement, JsonElement> find) => find(JsonDocument.Parse(text).RootElement).GetProperty("outcome").GetString()!;
        Assert.Equal(Outcome(tried.Output, r => r.GetProperty("cases")[0]), Outcome(run.Output, r => r));
    }

    // Every way to one case comes to the same machine: the sweep, the case alone, a run.
    [Fact]
    public async Task Try_DrawnRoadNumber_IsTheSameHoweverTheCaseIsRun()
    {
        string[] rows = (await Outcomes()).Trim().Split('\n')[1..];
        string[] numbers = [.. rows.Select(r => r.Split(',')[2].Trim('"'))];
        Assert.Equal(["4101", "4104", "4107", "4112"], numbers.Distinct().Order(StringComparer.Ordinal));
        foreach (int number in (int[])[0, 1, 3, 13])
        {
            Call tried = await Call.Of([.. s_draft, "--case", $"{number}", "--json"]);
            Call run = await Call.Of("run", "leaking compartment", "--case", $"{number}", "--for", "1 s", "--json");
            Assert.Equal(numbers[number], JsonDocument.Parse(tried.Output).RootElement.GetProperty("cases")[0].GetProperty("road_number").GetString());
            Assert.Equal(numbers[number], JsonDocument.Parse(run.Output).RootElement.GetProperty("road_number").GetString());
        }
    }

    [Fact]
    public async Task Try_OneRoadNumberAskedFor_IsOfItAloneAndSaysHowToSeeACase()
    {
        Call call = await Call.Of([.. s_draft, "--cases", "16", "--road-number", "4112"]);
        Assert.Contains("16 cases of `leaking compartment` on road number 4112", call.Output, StringComparison.Ordinal);
        Assert.Contains("--road-number 4112 --seed 1 --case", call.Output, StringComparison.Ordinal);
    }

    // What is told in the terminal, in JSON and in the report is one measure.
    [Fact]
    public async Task Try_WhatMatters_IsTheSameInTerminalJsonAndReport()
    {
        using ScratchFolder scratch = new();
        string file = scratch.At("trial.html");
        Call told = await Call.Of([.. s_draft, "--cases", "96", "--html", file]);
        JsonElement trial = JsonDocument.Parse((await Call.Of([.. s_draft, "--cases", "96", "--json"])).Output).RootElement.GetProperty("trials")[0];
        JsonElement first = trial.GetProperty("what_matters")[0];
        Assert.Equal("road number", first.GetProperty("name").GetString());
        string share = first.GetProperty("share").GetDouble().ToString("0 %", System.Globalization.CultureInfo.InvariantCulture);
        Assert.Contains($"What tells most whether it fails: road number {share};", told.Output, StringComparison.Ordinal);
        Assert.Contains($">{share}</text>", await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal(96, trial.GetProperty("road_numbers").EnumerateArray().Sum(n => n.GetProperty("applicable").GetInt32()));
        Assert.Equal("4112", trial.GetProperty("failures")[0].GetProperty("road_numbers")[0].GetString());
    }

    // On this road number the draft fails in most cases: the report has its map with the mechanism's mark, counted, and the bound.
    [Fact]
    public async Task Try_IntoAPage_DrawsEveryCaseOnTheMap()
    {
        using ScratchFolder scratch = new();
        string file = scratch.At("trial.html");
        Call call = await Call.Of("try", "empty-a-leaking-compartment-draft", "-s", "leaking compartment", "--road-number", "4112", "--cases", "24", "--html", file);
        Assert.Equal(ExitCode.No, call.Exit);
        string page = await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken);
        Assert.Contains("class=\"c-field\"", page, StringComparison.Ordinal);
        Assert.Contains("class=\"c-share\"", page, StringComparison.Ordinal);
        Assert.Matches(@"engine starves, [1-9]", page);
    }

    [Fact]
    public async Task Try_WithStepsLeftOut_TellsWhatEachIsWorth()
    {
        Call call = await Call.Of([.. s_draft, "--cases", "24", "--left-out"]);
        Assert.Contains("tried by simulation in 24 cases", call.Output, StringComparison.Ordinal);
        Assert.Contains("Without step 6.", call.Output, StringComparison.Ordinal);
        Assert.Contains("24 of 24 fail: engine starves", call.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("proved", call.Output, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Try_ACardThatFails_SaysNoAndLaysItOut()
    {
        using ScratchFolder scratch = new();
        string card = scratch.Write("starve.card", """
            Card: Close everything
            For: mechanical
            Must never: the engine starves.
            Done when: the engine runs. Stays so for 10 min.
            1. Go to the fuel panel on the right side.
            2. Close the forward supply valve.
            3. Close the centre supply valve.
            4. Close the aft supply valve.
            """);
        Call call = await Call.Of("try", card, "--book", "books/curlew", "-s", "leaking compartment", "--cases", "16");
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains("16 × engine starves", call.Output, StringComparison.Ordinal);
        Assert.Contains("closed the aft supply valve", call.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("try", "empty-a-leeking-compartment")]
    [InlineData("try", "empty-a-leaking-compartment", "-s", "leeking compartment")]
    [InlineData("try", "empty-a-leaking-compartment", "--cases", "0")]
    [InlineData("try", "empty-a-leaking-compartment", "--road-number", "4113")]
    [InlineData("try")]
    public async Task Try_CalledWrongly_SaysSo(params string[] arguments)
    {
        Call call = await Call.Of(arguments);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.NotEmpty(call.Error);
    }

    private static async Task<string> Outcomes(params string[] more)
    {
        using ScratchFolder scratch = new();
        string file = scratch.At("outcomes.csv");
        await Call.Of([.. s_draft, "--cases", "48", "--outcomes", file, .. more]);
        return await File.ReadAllTextAsync(file);
    }

    /// <summary>A card for two situations has a report of both.</summary>
    [Fact]
    public async Task Try_TwoSituationsWithReport_BothAreTold()
    {
        using ScratchFolder scratch = new();
        Call call = await Call.Of("try", "brake-test-before-departure", "--cases", "16", "--html", scratch.At("trial.html"));
        Assert.Equal(ExitCode.Good, call.Exit);
        string page = await File.ReadAllTextAsync(scratch.At("trial.html"));
        Assert.Equal(2, page.Split("<section class=\"situation\">").Length - 1);
        Assert.Contains("in “before departure”", page, StringComparison.Ordinal);
        Assert.Contains("in “hoses crossed at the rear”", page, StringComparison.Ordinal);
    }

    /// <summary>The report is in the language that is asked for; what is counted is the same, and so are the names in the book's own words.</summary>
    [Fact]
    public async Task Try_IntoAPageInSpanish_SaysItInSpanish()
    {
        using ScratchFolder scratch = new();
        string[] asked = ["try", "empty-a-leaking-compartment-draft", "-s", "leaking compartment", "--road-number", "4112", "--cases", "24", "--html"];
        await Call.Of([.. asked, scratch.At("english.html")]);
        await Call.Of([.. asked, scratch.At("spanish.html"), "--language", "es"]);
        string english = await File.ReadAllTextAsync(scratch.At("english.html"), TestContext.Current.CancellationToken);
        string spanish = await File.ReadAllTextAsync(scratch.At("spanish.html"), TestContext.Current.CancellationToken);
        Assert.Contains("<html lang=\"es\">", spanish, StringComparison.Ordinal);
        foreach (string said in new[] { "Dónde falla", "Cómo falla", "La ficha falla en <b>", "Tiempo hasta terminar", "en el paso" })
        {
            Assert.Contains(said, spanish, StringComparison.Ordinal);
        }

        foreach (string said in new[] { "Where it fails", "How it fails", "The card fails in", "at step", "stopped safely" })
        {
            Assert.Contains(said, english, StringComparison.Ordinal);
            Assert.DoesNotContain(said, spanish, StringComparison.Ordinal);
        }

        Assert.Equal(english.Split("<circle").Length, spanish.Split("<circle").Length);
    }
}
