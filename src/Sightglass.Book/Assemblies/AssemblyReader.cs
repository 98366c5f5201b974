using System.Collections.Immutable;
using Sightglass.Book.Messages;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Assemblies;

/// <summary>Reads the declarations of assemblies; what their parts say is read at each use.</summary>
internal sealed class AssemblyReader
{
    private readonly ReadContext _context;
    private readonly HashSet<string> _filled = new(StringComparer.Ordinal);
    private readonly ImmutableDictionary<string, YamlNode?> _parameters;

    private bool _broken;

    private AssemblyReader(ImmutableDictionary<string, YamlNode?> parameters, ReadContext context) => (_parameters, _context) = (parameters, context);

    public static ImmutableDictionary<string, Assembly> ReadAll(IEnumerable<YamlEntry> entries, ReadContext context) =>
        entries.Select(e => Read(e, context)).OfType<Assembly>().ToImmutableDictionary(a => a.Name, StringComparer.Ordinal);

    private static Assembly? Read(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the assembly `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        map.Text("text");
        ImmutableArray<YamlEntry> declared = Entries(map, "parameters", context);
        AssemblyReader reader = new(Parameters(declared, context), context);
        ImmutableDictionary<string, ImmutableArray<YamlEntry>> parts =
            Assembly.Sections.ToImmutableDictionary(s => s, s => Entries(map, s, context), StringComparer.Ordinal);
        ImmutableArray<YamlEntry> ports = Entries(map, "ports", context);
        map.Finish();
        reader.CheckParts(parts, ports);
        foreach (YamlEntry unused in declared.Where(p => !reader._filled.Contains(p.Name)))
        {
            context.AddMissing(BookMessages.UnusedParameter(unused.Key.Span, unused.Name, entry.Name));
        }

        return new(entry.Name, entry.Key.Span, reader._parameters, parts, ports) { IsBroken = reader._broken };
    }

    private static ImmutableArray<YamlEntry> Entries(MapReader map, string key, ReadContext context) =>
        map.Take(key) is { } node && MapReader.AsMap(node, $"`{key}`", context) is { } entries ? entries.Entries : [];

    private static ImmutableDictionary<string, YamlNode?> Parameters(ImmutableArray<YamlEntry> declared, ReadContext context)
    {
        var parameters = ImmutableDictionary.CreateBuilder<string, YamlNode?>(StringComparer.Ordinal);
        parameters[Assembly.NameOfUse] = null;
        foreach (YamlEntry e in declared)
        {
            if (e.Name == Assembly.NameOfUse || Assembly.KeysOfUse.Contains(e.Name))
            {
                context.Add(BookMessages.BadName(e.Key.Span, e.Name, "the word has a meaning of its own"));
            }
            else if (NameRules.Check(e.Key, context) && MapReader.Of(e.Value, e.Key.Span, $"the parameter `{e.Name}`", context) is { } map)
            {
                map.Text("text");
                parameters[e.Name] = map.Take("usual");
                map.Finish();
            }
        }

        return parameters.ToImmutable();
    }

    private void CheckParts(ImmutableDictionary<string, ImmutableArray<YamlEntry>> parts, ImmutableArray<YamlEntry> ports)
    {
        foreach (YamlEntry part in Assembly.Sections.SelectMany(s => parts[s]))
        {
            if (!Holes.In(part.Name).Contains(Assembly.NameOfUse) && !_context.Found.IsDamagedAround(part.Key.Span))
            {
                _context.Add(BookMessages.NameWithoutUse(part.Key.Span, part.Name));
                _broken = true;
            }

            CheckHoles(part.Key);
            CheckHoles(part.Value);
        }

        foreach (YamlEntry port in ports)
        {
            NameRules.Check(port.Key, _context);
            CheckHoles(port.Value);
        }
    }

    private void CheckHoles(YamlNode node)
    {
        switch (node)
        {
            case YamlScalar s:
                foreach (string hole in Holes.In(s.Value))
                {
                    _filled.Add(hole);
                    if (!_parameters.ContainsKey(hole))
                    {
                        _context.AddMissing(BookMessages.NoParameter(s.Span, hole, _parameters.Keys));
                        _broken = true;
                    }
                }

                break;
            case YamlList list:
                foreach (YamlNode item in list.Items)
                {
                    CheckHoles(item);
                }

                break;
            case YamlMap map:
                foreach (YamlEntry e in map.Entries)
                {
                    CheckHoles(e.Key);
                    CheckHoles(e.Value);
                }

                break;
        }
    }
}
