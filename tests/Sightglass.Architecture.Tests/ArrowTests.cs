using System.Xml.Linq;

namespace Sightglass.Architecture.Tests;

public sealed class ArrowTests
{
    [Fact]
    public void Projects_Found_AllStandInTheTable()
    {
        string[] names = [.. RepositoryFiles.Projects("src").Select(ShortName)];
        Assert.Contains("Basics", names);
        Assert.Empty(names.Where(n => !Arrows.IsKnown(n)));
    }

    [Fact]
    public void ProjectReferences_OfSources_FollowTheArrows()
    {
        IEnumerable<string> wrong =
            from project in RepositoryFiles.Projects("src")
            from target in References(project)
            where !Arrows.IsAllowed(ShortName(project), target)
            select $"{ShortName(project)} → {target}";
        Assert.Empty(wrong);
    }

    [Fact]
    public void UsedAssemblies_OfSources_AreBelow()
    {
        IEnumerable<string> wrong =
            from assembly in CompiledAssembly.OfSources()
            from used in assembly.Assemblies
            where used.StartsWith("Sightglass.", StringComparison.Ordinal)
            where !Arrows.IsReachable(Short(assembly.Name), Short(used))
            select $"{assembly.Name} → {used}";
        Assert.Empty(wrong);
    }

    [Theory]
    [InlineData("Network", "Book")]
    [InlineData("Cards", "Plant")]
    [InlineData("Plant", "World")]
    [InlineData("Drawing", "World")]
    [InlineData("Web", "Cli")]
    public void IsReachable_Upwards_No(string from, string to) => Assert.False(Arrows.IsReachable(from, to));

    [Fact]
    public void TestProjects_OfSources_MirrorThem()
    {
        HashSet<string> tests = [.. RepositoryFiles.Projects("tests").Select(ShortName)];
        string[] besides = ["Architecture", "Reference", "Stranger", "Browser"];
        IEnumerable<string> stray = tests.Where(t => !besides.Contains(t.Replace(".Tests", "", StringComparison.Ordinal))
            && !Arrows.IsKnown(t.Replace(".Tests", "", StringComparison.Ordinal)));
        Assert.Empty(stray);
    }

    private static IEnumerable<string> References(string project) =>
        XDocument.Parse(RepositoryFiles.Read(project)).Descendants("ProjectReference")
            .Select(r => ShortName(((string?)r.Attribute("Include"))!.Replace('\\', '/')));

    private static string ShortName(string project) => Short(Path.GetFileNameWithoutExtension(project));

    private static string Short(string name) => name.Replace("Sightglass.", "", StringComparison.Ordinal);
}
