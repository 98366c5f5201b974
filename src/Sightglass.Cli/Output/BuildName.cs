using System.Reflection;

namespace Sightglass.Cli.Output;

/// <summary>Which build this is: results are compared bit for bit within one build only.</summary>
internal static class BuildName
{
    public static string Text { get; } =
        "Sightglass " + (typeof(BuildName).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "of an unknown version");
}
