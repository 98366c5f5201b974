namespace Sightglass.Drawing.Diagram;

/// <summary>One name for a row of like parts: <c>supply valves</c> for the forward, centre and aft supply valve.</summary>
internal static class RowCaption
{
    /// <summary>The caption, or null where the parts are not alike.</summary>
    public static string? Of(IReadOnlyList<(DiagramNode Node, DiagramNode Tank)> parts)
    {
        List<string> names = [.. parts.Select(p => Without(p.Node.Id, p.Tank)).Distinct(StringComparer.Ordinal)];
        if (names.Count == 1)
        {
            return parts.Count > 1 ? Plural(names[0]) : names[0];
        }

        List<string> kinds = [.. parts.Select(p => p.Node.Kind).Distinct(StringComparer.Ordinal)];
        return kinds.Count == 1 && kinds[0].Length > 0 ? Plural(kinds[0]) : null;
    }

    // The part's name without the words that name its tank.
    private static string Without(string name, DiagramNode tank)
    {
        HashSet<string> own = [.. Words(tank.Id), .. Words(tank.Label)];
        string rest = string.Join(' ', name.Split(' ').Where(w => !own.Contains(w.Trim(',', '.').ToLowerInvariant())));
        return rest.Length > 0 ? rest : name;
    }

    private static IEnumerable<string> Words(string text) =>
        text.ToLowerInvariant().Split([' ', ',', '.'], StringSplitOptions.RemoveEmptyEntries);

    private static string Plural(string noun) => noun.EndsWith('s') || noun.EndsWith('x') ? noun + "es" : noun + "s";
}
