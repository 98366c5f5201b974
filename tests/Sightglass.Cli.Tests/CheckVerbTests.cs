using System.Text.Json;

namespace Sightglass.Cli.Tests;

public sealed class CheckVerbTests
{
    [Fact]
    public async Task Check_TheDemo_IsGood()
    {
        Call call = await Call.Of("check", "books/curlew");
        Assert.True(call.Exit == ExitCode.Good, call.Output);
        Assert.Contains("no errors", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_WrongUnitAndUnknownItem_TellsBothWithTheirPlaces()
    {
        using ScratchFolder scratch = new();
        scratch.Write("book.yaml", """
            book: Broken
            items:
              tank:
                kind: tank
                shape: prismatic
                floor area: 1.5 kg
                depth: 1.5 m
              hole:
                kind: orifice
                from: tnak
                to: outside
                diameter: 25 mm
            """);
        Call call = await Call.Of("check", scratch.Folder);
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains("book.yaml:6:17: ", call.Output, StringComparison.Ordinal);
        Assert.Contains("book.yaml:10:11: ", call.Output, StringComparison.Ordinal);
        Assert.Contains("did you mean `tank`?", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_AFormulaWithAnUnknownName_TellsItOnceForAllRoadNumbers()
    {
        using ScratchFolder scratch = new();
        scratch.Write("book.yaml", """
            book: Broken
            items:
              tank: { kind: tank, shape: prismatic, floor area: 1.5 m^2, depth: 1.5 m }
              gauge: { kind: gauge, shows: level of tnak, scale: 0 m .. 2 m, resolution: 1 cm }
            road numbers:
              "1": {}
              "2": {}
            """);
        Call call = await Call.Of("check", scratch.Folder, "--json");
        JsonElement answer = JsonDocument.Parse(call.Output).RootElement;
        Assert.Equal(1, answer.GetProperty("errors").GetInt32());
        Assert.Equal(4, answer.GetProperty("findings")[0].GetProperty("line").GetInt32());
    }

    /// <summary>A report that a card tells in its own words, with a letter wrong: it would never count for whoever works by the card.</summary>
    [Fact]
    public async Task Check_ADrillToldAsNoCardTellsIt_SaysWhereAndWhatWouldBeRight()
    {
        using ScratchFolder scratch = new();
        string demo = Path.Combine(Call.Root, "books", "curlew");
        foreach (string file in Directory.EnumerateFiles(demo, "*", SearchOption.AllDirectories))
        {
            string path = scratch.At(Path.GetRelativePath(demo, file));
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.Copy(file, path);
        }

        string drills = scratch.At("drills/power.yaml");
        string[] lines = File.ReadAllLines(drills);
        int at = Array.FindIndex(lines, l => l.Contains("told as: [\"the headlight is lit\"]", StringComparison.Ordinal));
        lines[at] = lines[at].Replace("[\"the headlight is lit", "[\"the headlight is lid", StringComparison.Ordinal);
        File.WriteAllLines(drills, lines);
        Call call = await Call.Of("check", scratch.Folder);
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains($"power.yaml:{at + 1}:7: W031: no card that solves the drill tells `the headlight is lid`; did you mean `the headlight is lit`?", call.Output, StringComparison.Ordinal);
        Assert.Contains("1 error", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_NoFolder_IsWrongUse()
    {
        Call call = await Call.Of("check", "no-such-folder");
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains("no-such-folder", call.Error, StringComparison.Ordinal);
    }
}
