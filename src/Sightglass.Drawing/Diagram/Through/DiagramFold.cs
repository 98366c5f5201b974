using System.Collections.Immutable;
using Sightglass.Basics.Language;

namespace Sightglass.Drawing.Diagram;

/// <summary>
/// Folds a train's diagram: vehicles that follow each other, are built alike, face the same way and look alike are drawn once, with how many they are.
/// </summary>
public static class DiagramFold
{
    /// <summary>The folded network: of each group its first vehicle, with what couples it to its neighbours.</summary>
    /// <param name="input">The network of the whole train.</param>
    /// <param name="look">What a thing shows that must be alike, by its name: positions, faults. Pressures may differ: a drawing shows those of the group's first vehicle.</param>
    public static DiagramInput Of(DiagramInput input, Func<string, string> look)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(look);
        List<DiagramNode[]> vehicles = [.. input.Nodes.Where(n => n.Symbol != DiagramSymbol.Coupling).GroupBy(n => n.Vehicle).OrderBy(g => g.Average(n => n.Order)).Select(g => g.ToArray())];
        Dictionary<string, int> vehicleOf = input.Nodes.ToDictionary(n => n.Id, n => n.Vehicle, StringComparer.Ordinal);
        HashSet<(int, int)> divided = Divided(input, look, vehicleOf);
        Dictionary<int, int> shownBy = [];
        Dictionary<string, string> renamed = new(StringComparer.Ordinal);
        ImmutableSortedDictionary<int, string>.Builder captions = ImmutableSortedDictionary.CreateBuilder<int, string>();
        for (int i = 0; i < vehicles.Count;)
        {
            string like = Signature(vehicles[i], look);
            int end = i + 1;
            while (end < vehicles.Count && Signature(vehicles[end], look) == like && !divided.Contains(Pair(vehicles[end - 1][0].Vehicle, vehicles[end][0].Vehicle)))
            {
                end++;
            }

            for (int k = i; k < end; k++)
            {
                shownBy[vehicles[k][0].Vehicle] = vehicles[i][0].Vehicle;
                Rename(vehicles[k], vehicles[i], renamed);
            }

            captions[vehicles[i][0].Vehicle] = Caption(vehicles[i][0].VehicleName, vehicles[end - 1][0].VehicleName, end - i);
            i = end;
        }

        return input with
        {
            Nodes =
            [
                .. input.Nodes.Where(n => n.Symbol == DiagramSymbol.Coupling ? IsBetweenGroups(n, vehicleOf, shownBy) : shownBy[n.Vehicle] == n.Vehicle)
                    .Select(n => n.Symbol == DiagramSymbol.Coupling ? n with { From = Shown(n.From, renamed), To = Shown(n.To, renamed) } : n),
            ],
            Captions = captions.ToImmutable(),
        };
    }

    /// <summary>Neighbours between which a coupling looks other than most do or is joined crosswise: one has parted.</summary>
    private static HashSet<(int, int)> Divided(DiagramInput input, Func<string, string> look, Dictionary<string, int> vehicleOf)
    {
        (int, int, string Look, string Id)[] couplings = [.. input.Nodes.Where(n => n.Symbol == DiagramSymbol.Coupling && n.From is not null && n.To is not null).Select(n => (vehicleOf.GetValueOrDefault(n.From!, -1), vehicleOf.GetValueOrDefault(n.To!, -1), look(n.Id), n.Id))];
        string? most = couplings.CountBy(c => c.Look).OrderByDescending(c => c.Value).ThenBy(c => c.Key, StringComparer.Ordinal).FirstOrDefault().Key;
        HashSet<string> crossed = [.. input.Crossings.SelectMany(c => new[] { c.One, c.Other })];
        return [.. couplings.Where(c => c.Look != most || crossed.Contains(c.Id)).Select(c => Pair(c.Item1, c.Item2))];
    }

    private static (int, int) Pair(int one, int two) => (Math.Min(one, two), Math.Max(one, two));

    private static string Caption(string first, string last, int count)
    {
        if (count == 1 || first.Length == 0)
        {
            return first.Length == 0 ? Say.It("this machine") : Say.Book(first);
        }

        (first, last) = (Say.Book(first), Say.Book(last));
        string kind = first[..first.LastIndexOf(' ')];
        return last.StartsWith(kind, StringComparison.Ordinal)
            ? Say.With($"{Plural.Of(kind)} {first[(kind.Length + 1)..]} to {last[(kind.Length + 1)..]}, {count} alike")
            : Say.With($"{first} to {last}, {count} alike");
    }

    private static bool IsBetweenGroups(DiagramNode coupling, Dictionary<string, int> vehicleOf, Dictionary<int, int> shownBy) =>
        coupling.From is null || coupling.To is null
        || shownBy.GetValueOrDefault(vehicleOf.GetValueOrDefault(coupling.From, -1), -1) != shownBy.GetValueOrDefault(vehicleOf.GetValueOrDefault(coupling.To, -1), -2);

    private static string? Shown(string? id, Dictionary<string, string> renamed) => id is null ? null : renamed.GetValueOrDefault(id, id);

    private static void Rename(DiagramNode[] nodes, DiagramNode[] shown, Dictionary<string, string> renamed)
    {
        Dictionary<string, string> own = shown.ToDictionary(n => n.Own, n => n.Id, StringComparer.Ordinal);
        foreach (DiagramNode node in nodes)
        {
            renamed[node.Id] = own[node.Own];
        }
    }

    // What a vehicle holds, whatever its number; the order of what is coupled says which way it faces.
    private static string Signature(DiagramNode[] nodes, Func<string, string> look)
    {
        string name = nodes[0].VehicleName;
        string Own(string? id) => id is null ? "" : name.Length == 0 ? id : id.Replace(name, "#", StringComparison.Ordinal);
        string facing = string.Join(',', nodes.Where(n => n.IsEnd).OrderBy(n => n.Order).ThenBy(n => n.Own, StringComparer.Ordinal).Select(n => n.Own));
        return (name.Length == 0 ? "the machine" : "") + facing
            + string.Join('\n', nodes.Select(n => $"{n.Own}|{n.Role}|{n.Symbol}|{Own(n.From)}|{Own(n.To)}|{look(n.Id)}").Order(StringComparer.Ordinal));
    }
}
