namespace Sightglass.Architecture.Tests;

/// <summary>The network knows stores and paths, not what they stand for, and talks to nobody.</summary>
public sealed class NetworkTests
{
    private static readonly HashSet<string> s_trade = new(StringComparer.Ordinal)
    {
        "locomotive", "locomotives", "train", "trains", "railway", "railroad", "rail", "rails", "brake", "brakes", "fuel", "engine", "engines", "diesel",
        "throttle", "truck", "trucks", "wheel", "wheels", "axle", "cab", "car", "cars", "coupler", "couplers", "compressor", "governor", "reservoir",
        "cylinder", "cylinders", "headlight", "horn", "sand", "sander", "battery", "radiator", "traction", "pantograph", "conductor", "engineer",
    };

    private static readonly string[] s_talking =
        ["System.IO", "System.Console", "System.Net", "System.Diagnostics.Process", "System.Environment", "Microsoft.", "Newtonsoft"];

    [Fact]
    public void Identifiers_OfTheNetwork_HoldNoWordOfTheTrade()
    {
        string[] files = [.. RepositoryFiles.Code("src/Sightglass.Network")];
        Assert.NotEmpty(files);
        IEnumerable<string> wrong =
            from path in files
            from word in CodeText.IdentifierWords(RepositoryFiles.Read(path)).Concat(CodeText.IdentifierWords(Path.GetFileName(path))).Distinct()
            where s_trade.Contains(word)
            select $"{path}: {word}";
        Assert.Empty(wrong);
    }

    [Fact]
    public void UsedMembers_OfTheNetwork_DoNoInputOrOutput()
    {
        CompiledAssembly network = CompiledAssembly.OfSources().Single(a => a.Name == "Sightglass.Network");
        Assert.Empty(network.Members.Where(m => s_talking.Any(t => m.StartsWith(t, StringComparison.Ordinal))));
    }

    [Fact]
    public void IdentifierWords_OfASource_AreSplitAndLeaveProseOut() =>
        Assert.Equal(
            ["x", "close", "train", "valve", "io"],
            CodeText.IdentifierWords("x /* brake */ = CloseTrainValve(\"fuel\", 'c'); // engine\nIO"));
}
