using Sightglass.Basics.Language;
namespace Sightglass.Drawing.Diagram;

/// <summary>One name for a row of like parts: <c>supply valves</c> for the forward, centre and aft supply valve.</summary>
internal static class RowCaption
{
    /// <summary>The caption, or null where the parts are not alike.</summary>
    public static string? Of(IReadOnlyList<(DiagramNode Node, DiagramNode Tank)> parts)
    {
        List<string> names = [.. parts.Select(p => Without(Say.Book(p.Node.Id), p.Tank)).Distinct(StringComparer.Ordinal)];
        if (names.Count == 1 && names[0].Length > 0)
        {
            return parts.Count > 1 ? Plural.Of(names[0]) : names[0];
        }

        List<string> kinds = [.. parts.Select(p => Say.Word(p.Node.Kind)).Distinct(StringComparer.Ordinal)];
        return kinds.Count == 1 && kinds[0].Length > 0 ? Plural.Of(kinds[0]) : null;
    }

    // The part's name without the words that name its tank; empty where an English name has no end without them: "heat into the".
    private static string Without(string name, DiagramNode tank)
    {
        HashSet<string> own = [.. Words(Say.Book(tank.Id)), .. Words(tank.Label)];
        string rest = string.Join(' ', name.Split(' ').Where(w => !own.Contains(w.Trim(',', '.').ToLowerInvariant())));
        string trimmed = Plural.Trimmed(rest);
        return rest.Length == 0 ? name : trimmed == rest || Tongue.Spoken.Code != Tongue.English.Code ? trimmed : "";
    }

    private static IEnumerable<string> Words(string text) =>
        text.ToLowerInvariant().Split([' ', ',', '.'], StringSplitOptions.RemoveEmptyEntries);
}
