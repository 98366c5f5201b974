using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Sightglass.Architecture.Tests;

public sealed partial class PackageTests
{
    [Fact]
    public void CentralVersions_All_AreExactAndOnce()
    {
        XElement[] versions = [.. Central().Descendants("PackageVersion")];
        Assert.NotEmpty(versions);
        Assert.Empty(versions.Where(v => !ExactVersion().IsMatch((string?)v.Attribute("Version") ?? "")).Select(v => v.ToString()));
        Assert.Empty(versions.GroupBy(v => (string?)v.Attribute("Include"), StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => g.Key));
    }

    [Fact]
    public void PackageReferences_OfProjects_AreCentral()
    {
        HashSet<string> central = new(
            Central().Descendants("PackageVersion").Select(v => (string)v.Attribute("Include")!), StringComparer.OrdinalIgnoreCase);
        IEnumerable<string> wrong =
            from project in Projects()
            from reference in XDocument.Parse(RepositoryFiles.Read(project)).Descendants("PackageReference")
            let name = (string)reference.Attribute("Include")!
            where !central.Contains(name) || reference.Attribute("Version") is not null || reference.Attribute("VersionOverride") is not null
            select $"{project}: {name}";
        Assert.Empty(wrong);
    }

    [Fact]
    public void LockFiles_OfProjects_StandBesideThem()
    {
        HashSet<string> files = [.. RepositoryFiles.All];
        Assert.Empty(Projects().Where(p => !files.Contains(Path.GetDirectoryName(p)!.Replace('\\', '/') + "/packages.lock.json")));
        Assert.Contains("<RestorePackagesWithLockFile>true<", RepositoryFiles.Read("Directory.Build.props"), StringComparison.Ordinal);
    }

    [Fact]
    public void Solution_Projects_AreAllThere()
    {
        string solution = RepositoryFiles.Read("Sightglass.slnx");
        Assert.Empty(Projects().Where(p => !solution.Contains($"\"{p}\"", StringComparison.Ordinal)));
    }

    [Fact]
    public void Files_OfTheRepository_NameNoRegistryAndNoPathOfAMachine()
    {
        string[] hosts = [.. new[] { "nuget", "npmjs", "debian", "pypi", "crates" }.SelectMany(n => new[] { n + ".org", n + ".io" })];
        IEnumerable<string> wrong =
            from path in RepositoryFiles.All
            where TextFile().IsMatch(path)
            let text = RepositoryFiles.Read(path)
            where hosts.Any(h => text.Contains(h, StringComparison.OrdinalIgnoreCase)) || MachinePath().IsMatch(text)
            select path;
        Assert.Empty(wrong);
    }

    private static XDocument Central() => XDocument.Parse(RepositoryFiles.Read("Directory.Packages.props"));

    private static IEnumerable<string> Projects() =>
        RepositoryFiles.Projects("src").Concat(RepositoryFiles.Projects("tests")).Concat(RepositoryFiles.Projects("bench"));

    [GeneratedRegex(@"^\d+\.\d+\.\d+(\.\d+)?(-[0-9A-Za-z.]+)?$")]
    private static partial Regex ExactVersion();

    [GeneratedRegex(@"\.(cs|csproj|props|razor|md|json|yaml|yml|css|js|mjs|sh|slnx|card|c|h|txt)$|(^|/)(test|run)$")]
    private static partial Regex TextFile();

    [GeneratedRegex(@"(?<![A-Za-z0-9.}])/(work|tmp|root|home)/(?!\))")]
    private static partial Regex MachinePath();
}
