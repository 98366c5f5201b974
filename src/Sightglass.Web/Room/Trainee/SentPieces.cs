namespace Sightglass.Web.Room.Trainee;

/// <summary>
/// What a page has got by one line. Large pieces that come again, such as the picture from a place to which somebody comes back, are sent once: the page keeps the last ones, as this does,
/// and afterwards is told only which.
/// </summary>
/// <param name="most">Large pieces that the page keeps: the first of them makes room for the next.</param>
internal sealed class SentPieces(int most = SentPieces.Kept)
{
    /// <summary>As the page's script has it.</summary>
    public const int Kept = 64;

    /// <summary>Letters from which it is worth keeping.</summary>
    public const int Large = 400;

    private readonly Dictionary<string, string> _there = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _kept = new(StringComparer.Ordinal);
    private readonly string?[] _places = new string?[most];
    private int _next;

    /// <summary>Id and content of each piece that the page does not show yet, in order; a content is a text, or the number of one that was sent before.</summary>
    /// <param name="pieces">All of the page, each after the one that holds it.</param>
    public List<object> Changed(IReadOnlyList<Fragment> pieces)
    {
        List<object> changed = [];
        HashSet<string> anew = new(StringComparer.Ordinal);
        foreach (Fragment piece in pieces)
        {
            if (!anew.Contains(piece.Within) && _there.TryGetValue(piece.Id, out string? has) && has == piece.Html)
            {
                continue;
            }

            _there[piece.Id] = piece.Html;
            anew.Add(piece.Id);
            changed.Add(piece.Id);
            changed.Add(Content(piece.Html));
        }

        foreach (string left in _there.Keys.Except(pieces.Select(p => p.Id)).ToArray())
        {
            _there.Remove(left);
        }

        return changed;
    }

    private object Content(string html)
    {
        if (html.Length < Large)
        {
            return html;
        }

        if (_kept.TryGetValue(html, out int number))
        {
            return number;
        }

        if (_places[_next] is { } old)
        {
            _kept.Remove(old);
        }

        (_places[_next], _kept[html]) = (html, _next);
        _next = (_next + 1) % most;
        return html;
    }
}
