using CsCheck;
using Sightglass.Web.Room.Trainee;

namespace Sightglass.Web.Tests.Room;

public sealed class SentPiecesTests
{
    private static readonly string[] s_places = [.. Enumerable.Range(0, 9).Select(i => new string((char)('a' + i), SentPieces.Large + i))];

    /// <summary>Whatever comes, goes and comes again, a page that keeps as many pieces as the line thinks shows what it is to show.</summary>
    [Fact]
    public void Changed_AnyPieces_PageShowsThemAll() => Gen.Select(Gen.Int[1, 6], Gen.Select(Gen.Int[0, 8], Gen.Int[-3, 8]).Array[1, 40]).Holds(((int Most, (int Main, int Plate)[] Looks) drawn) =>
    {
        SentPieces sent = new(drawn.Most);
        Page page = new(drawn.Most);
        foreach (((int main, int plate), int i) in drawn.Looks.Select((l, i) => (l, i)))
        {
            Fragment[] pieces = [new("main", s_places[main]), .. plate < 0 ? [] : new Fragment[] { new("plate", s_places[plate], "main") }, new("clock", $"0:{i:00}")];
            page.Put(sent.Changed(pieces));
            Assert.All(pieces, p => Assert.Equal(p.Html, page.Shown[p.Id]));
        }
    });

    [Fact]
    public void Changed_TheSameAgain_NothingIsSent()
    {
        SentPieces sent = new();
        Fragment[] pieces = [new("main", s_places[0]), new("clock", "0:01")];
        Assert.Equal(["main", s_places[0], "clock", "0:01"], sent.Changed(pieces));
        Assert.Empty(sent.Changed(pieces));
    }

    /// <summary>Coming back to a place sends its picture by number; what stands in it is sent anew, because the page has lost it.</summary>
    [Fact]
    public void Changed_ALargePieceThatComesAgain_IsItsNumber()
    {
        SentPieces sent = new();
        _ = sent.Changed([new("main", s_places[0]), new("it", "open", "main")]);
        _ = sent.Changed([new("main", s_places[1]), new("it", "open", "main")]);
        Assert.Equal(["main", 0, "it", "open"], sent.Changed([new("main", s_places[0]), new("it", "open", "main")]));
    }

    /// <summary>As the page's script does it.</summary>
    private sealed class Page(int most)
    {
        private readonly string[] _kept = new string[most];
        private int _next;

        public Dictionary<string, string> Shown { get; } = [];

        public void Put(List<object> pieces)
        {
            for (int i = 0; i < pieces.Count; i += 2)
            {
                string id = (string)pieces[i], html = pieces[i + 1] is int number ? _kept[number] : (string)pieces[i + 1];
                if (pieces[i + 1] is string && html.Length >= SentPieces.Large)
                {
                    (_kept[_next], _next) = (html, (_next + 1) % most);
                }

                Shown[id] = html;
                foreach (string lost in id == "main" ? Shown.Keys.Where(k => k == "plate").ToArray() : [])
                {
                    Shown.Remove(lost); // it stood within
                }
            }
        }
    }
}
