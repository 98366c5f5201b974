using System.Collections.Immutable;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>A name that a situation gives once for all cars of its train: <c>control valve of each car</c>.</summary>
internal sealed class EachCar(ImmutableArray<Vehicle> vehicles, StartScope scope, ReadContext context)
{
    private const string Words = "each car";

    /// <summary>The name as it is, or one for every car that has it.</summary>
    public IEnumerable<YamlScalar> Expand(YamlScalar name)
    {
        if (!name.Value.Contains(Words, StringComparison.Ordinal) || scope.Items.ContainsKey(name.Value))
        {
            return [name];
        }

        YamlScalar[] all = [.. vehicles.Where(v => v.Name.StartsWith("car ", StringComparison.Ordinal))
            .Select(v => name with { Value = name.Value.Replace(Words, v.Name, StringComparison.Ordinal) })
            .Where(s => scope.Knows(s.Value))];
        if (all.Length == 0)
        {
            context.AddMissing(BookMessages.NoEachCar(name.Span, name.Value));
        }

        return all;
    }

    /// <inheritdoc cref="Expand(YamlScalar)"/>
    public IEnumerable<YamlEntry> Expand(YamlEntry entry) => Expand(entry.Key).Select(k => ReferenceEquals(k, entry.Key) ? entry : new YamlEntry(k, entry.Value));
}
