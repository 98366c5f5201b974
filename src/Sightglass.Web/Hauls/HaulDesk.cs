using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Web.Live;
using Sightglass.World.Hauls;

namespace Sightglass.Web.Hauls;

/// <summary>Runs trains over the routes of the book that is served: one after the other, so that a page that asks for many keeps nobody else waiting for long.</summary>
/// <param name="shelf">The book.</param>
public sealed class HaulDesk(BookShelf shelf) : IDisposable
{
    private readonly OneByOne _one = new();

    /// <summary>Routes in the order of the author's files.</summary>
    public IReadOnlyList<Route> All => [.. shelf.Book.Routes.Values.OrderBy(r => r.Span)];

    /// <summary>What comes out, in the language that is spoken; null where it cannot be worked out, with the reasons.</summary>
    internal async Task<(HaulResult? Run, IReadOnlyList<HaulRefusal> Refused)> Of(Route route, HaulAsk ask)
    {
        ServedBook now = shelf.Now;
        Tongue tongue = Tongue.Spoken;
        return await _one.Do(() =>
        {
            using (tongue.Speak())
            {
                List<HaulRefusal> refused = [];
                HaulRequest request = new HaulReader(ask.Typed, refused).Read(route, ask.Sands);
                return (refused.Count == 0 ? Haul.Of(now.Fleet, request, refused) : null, (IReadOnlyList<HaulRefusal>)refused);
            }
        });
    }

    public void Dispose() => _one.Dispose();
}
