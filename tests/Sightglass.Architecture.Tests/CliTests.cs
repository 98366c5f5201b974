namespace Sightglass.Architecture.Tests;

/// <summary>The command line starts cold without loading a web server.</summary>
public sealed class CliTests
{
    [Fact]
    public void Files_OfTheCommandLine_TouchThePagesInOnePlaceOnly()
    {
        string[] touching =
        [
            .. RepositoryFiles.Code("src/Sightglass.Cli").Where(p =>
                CodeText.WithoutProse(RepositoryFiles.Read(p)) is { } code
                && (code.Contains("Sightglass.Web", StringComparison.Ordinal) || code.Contains("AspNetCore", StringComparison.Ordinal))),
        ];
        Assert.Equal(["src/Sightglass.Cli/Serving/PageServer.cs"], touching);
    }
}
