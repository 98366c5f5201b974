namespace Sightglass.Architecture.Tests;

public sealed class BannedSymbolTests
{
    /// <summary>Clock, chance and identity are handed in: a run is a function of its inputs.</summary>
    private static readonly string[] s_everywhere =
    [
        "System.DateTime.get_Now", "System.DateTime.get_UtcNow", "System.DateTime.get_Today",
        "System.DateTimeOffset.get_Now", "System.DateTimeOffset.get_UtcNow",
        "System.Random.get_Shared", "System.Random..ctor", "System.Guid.NewGuid",
        "System.Environment.get_TickCount", "System.Environment.get_TickCount64",
        "System.Threading.Thread.Sleep", "System.GC.Collect",
    ];

    /// <summary>Functions whose bits differ between machines.</summary>
    private static readonly string[] s_inNetwork =
    [
        .. new[] { "Pow", "Exp", "Log", "Log2", "Log10", "Sin", "Cos", "Tan", "Asin", "Acos", "Atan", "Atan2", "Sinh", "Cosh", "Tanh", "Cbrt" }
            .Select(f => "System.Math." + f),
    ];

    [Fact]
    public void UsedMembers_OfSources_AreNotBanned()
    {
        IReadOnlyList<CompiledAssembly> assemblies = CompiledAssembly.OfSources();
        Assert.NotEmpty(assemblies);
        Assert.Empty(assemblies.SelectMany(a => a.Members.Intersect(s_everywhere).Select(m => $"{a.Name}: {m}")));
    }

    [Fact]
    public void UsedMembers_OfTheNetwork_HaveTheSameBitsEverywhere()
    {
        CompiledAssembly network = CompiledAssembly.OfSources().Single(a => a.Name == "Sightglass.Network");
        Assert.Empty(network.Members.Intersect(s_inNetwork));
    }

    [Fact]
    public void Members_OfSources_AreSeen() =>
        Assert.Contains("System.Math.Sqrt", CompiledAssembly.OfSources().Single(a => a.Name == "Sightglass.Basics").Members);
}
