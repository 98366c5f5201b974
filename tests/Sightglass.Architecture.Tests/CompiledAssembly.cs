using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Sightglass.Architecture.Tests;

/// <summary>What a built assembly of this solution uses, read from its metadata without loading it.</summary>
internal sealed class CompiledAssembly
{
    private CompiledAssembly(string name, IReadOnlySet<string> assemblies, IReadOnlySet<string> members)
    {
        Name = name;
        Assemblies = assemblies;
        Members = members;
    }

    public string Name { get; }

    /// <summary>Names of the assemblies whose types it uses.</summary>
    public IReadOnlySet<string> Assemblies { get; }

    /// <summary>Members of other assemblies that it uses, as <c>System.DateTime.get_Now</c>.</summary>
    public IReadOnlySet<string> Members { get; }

    /// <summary>The output of every project under src, built in the same configuration as this test.</summary>
    public static IReadOnlyList<CompiledAssembly> OfSources() => [.. PathsOfSources().Select(p => Read(p.Name, p.Path))];

    /// <summary>Where the output of every project under src lies.</summary>
    public static IEnumerable<(string Name, string Path)> PathsOfSources()
    {
        DirectoryInfo framework = new(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar));
        string configuration = framework.Parent!.Name;
        return RepositoryFiles.Projects("src").Select(project =>
        {
            string name = Path.GetFileNameWithoutExtension(project);
            string folder = Path.Combine(RepositoryFiles.Root, Path.GetDirectoryName(project)!);
            return (name, Path.Combine(folder, "bin", configuration, framework.Name, name + ".dll"));
        });
    }

    private static CompiledAssembly Read(string name, string path)
    {
        using PEReader file = new(File.OpenRead(path));
        MetadataReader metadata = file.GetMetadataReader();
        HashSet<string> assemblies = [.. metadata.AssemblyReferences.Select(h => metadata.GetString(metadata.GetAssemblyReference(h).Name))];
        HashSet<string> members = [];
        foreach (MemberReferenceHandle handle in metadata.MemberReferences)
        {
            MemberReference member = metadata.GetMemberReference(handle);
            if (member.Parent.Kind == HandleKind.TypeReference)
            {
                TypeReference type = metadata.GetTypeReference((TypeReferenceHandle)member.Parent);
                members.Add($"{metadata.GetString(type.Namespace)}.{metadata.GetString(type.Name)}.{metadata.GetString(member.Name)}");
            }
        }

        return new(name, assemblies, members);
    }
}
