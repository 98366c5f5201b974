using System.Collections.Immutable;

namespace Sightglass.Web.Room.Trainee;

/// <summary>
/// Makes the pieces of one page again and again. Each piece is told what it is made of; while that is the same as last time, it is not made anew, and what it was is the same object.
/// </summary>
internal sealed class PieceMaker
{
    private readonly Dictionary<string, (object Of, string Html)> _made = new(StringComparer.Ordinal);
    private readonly ImmutableArray<Fragment>.Builder _pieces = ImmutableArray.CreateBuilder<Fragment>();

    /// <summary>Adds a piece.</summary>
    /// <typeparam name="T">What tells by <see cref="object.Equals(object)"/> whether it is the same.</typeparam>
    /// <param name="id">Of the element that holds it.</param>
    /// <param name="within">Id of the piece that holds the element; empty for the page itself. It was added before.</param>
    /// <param name="of">All that it is made of, but for the language, which a page keeps.</param>
    /// <param name="make">Makes it from that and from nothing else: a static function.</param>
    public void Add<T>(string id, string within, T of, Func<T, string> make)
        where T : IEquatable<T>
    {
        string html = _made.TryGetValue(id, out (object Of, string Html) before) && before.Of is T same && same.Equals(of) ? before.Html : make(of);
        _made[id] = (of, html);
        _pieces.Add(new(id, html, within));
    }

    /// <summary>All that were added since the last call, in order.</summary>
    public ImmutableArray<Fragment> All()
    {
        ImmutableArray<Fragment> all = _pieces.ToImmutable();
        _pieces.Clear();
        return all;
    }
}
