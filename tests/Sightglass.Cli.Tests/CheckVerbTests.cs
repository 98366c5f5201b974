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

    [Fact]
    public async Task Check_NoFolder_IsWrongUse()
    {
        Call call = await Call.Of("check", "no-such-folder");
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains("no-such-folder", call.Error, StringComparison.Ordinal);
    }
}
