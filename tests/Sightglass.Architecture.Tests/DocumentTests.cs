using System.Text.RegularExpressions;

namespace Sightglass.Architecture.Tests;

public sealed partial class DocumentTests
{
    [Fact]
    public void Links_OfDocuments_LeadSomewhere()
    {
        HashSet<string> files = [.. RepositoryFiles.All];
        IEnumerable<string> broken =
            from path in RepositoryFiles.All
            where path.EndsWith(".md", StringComparison.Ordinal)
            from Match link in Link().Matches(RepositoryFiles.Read(path))
            let target = link.Groups["target"].Value
            where !target.Contains("://", StringComparison.Ordinal)
            let whole = Path.GetRelativePath(RepositoryFiles.Root, Path.GetFullPath(Path.Combine(RepositoryFiles.Root, Path.GetDirectoryName(path)!, target))).Replace('\\', '/')
            where !files.Contains(whole) && !Directory.Exists(Path.Combine(RepositoryFiles.Root, whole))
            select $"{path}: {target}";
        Assert.Empty(broken);
    }

    [GeneratedRegex(@"\]\((?<target>[^)#\s]+)(#[^)]*)?\)")]
    private static partial Regex Link();
}
