using Sightglass.Book.Model;
using Sightglass.Storage.Proposals;
using Sightglass.Storage.WalkDowns;
using Sightglass.Training.Proposals;
using Sightglass.Training.WalkDowns;

namespace Sightglass.Storage.Tests.WalkDowns;

public sealed class WalkDownDeskTests
{
    private const string Book = "book: Heron\nplaces: { yard: { x: 1 m, y: 2.4 m, z: 0 m } }\nitems:\n  horn: { places: [yard], for: Warns., normal: Loud. }\n  bell: { places: [yard], for: Warns., normal: Loud. }\n  lamp: { places: [yard], for: Warns., normal: Lit. }\n";

    private static readonly string[] s_items = ["horn", "bell", "lamp"];
    private static readonly Guid s_phone = Guid.Parse("6f2b1b44-6a55-4a3c-9a0e-0d1f2b3c4d5e");

    /// <summary>A network gives no promise: messages come twice, late, in any order, and the program may end between any two of them.</summary>
    [Fact]
    public void Take_InAnyOrderTwiceAndOverRestarts_IsWhatThePhoneHadLast()
    {
        using TemporaryFolder folder = new();
        Directory.CreateDirectory(folder.Sub("heron"));
        File.WriteAllText(Path.Combine(folder.Sub("heron"), "book.yaml"), Book);
        for (int series = 0; series < 6; series++)
        {
            uint dice = (uint)(series * 2654435761);
            int Next(int sides) => (int)((dice = (dice * 1664525) + 1013904223) >> 16) % sides;
            string data = folder.Sub($"data{series}");
            List<(int Item, int Revision)> messages = [.. Enumerable.Range(0, 9).Select(i => (i % 3, 1 + (i / 3)))];
            messages.AddRange(Enumerable.Range(0, 6).Select(_ => (Next(3), 1 + Next(3))));
            for (int i = messages.Count - 1; i > 0; i--)
            {
                int other = Next(i + 1);
                (messages[i], messages[other]) = (messages[other], messages[i]);
            }

            while (messages.Count > 0)
            {
                using DataFolder open = DataFolder.Open(data);
                WalkDownDesk desk = new(open, new ProposalDesk(open, folder.Sub("heron"), TimeProvider.System), TimeProvider.System);
                int some = Math.Min(messages.Count, 1 + Next(5));
                foreach ((int item, int revision) in messages[..some])
                {
                    (Guid id, int kept) = Assert.Single(desk.Take(Result(item, revision)).Kept);
                    Assert.Equal(IdOf(item), id);
                    Assert.True(kept >= revision);
                }

                messages.RemoveRange(0, some);
            }

            using DataFolder end = DataFolder.Open(data);
            ProposalDesk proposals = new(end, folder.Sub("heron"), TimeProvider.System);
            Assert.Equal(
                [.. s_items.Order(StringComparer.Ordinal).Select(i => (i, 3, $"{i} 3"))],
                new WalkDownDesk(end, proposals, TimeProvider.System).All("Heron").Select(e => (e.Item!, e.Revision, e.Label!)));
            Assert.Equal(
                [.. s_items.Order(StringComparer.Ordinal).Select(i => $"{i} 3")],
                proposals.All().Where(p => p.State == ProposalState.Open).Select(p => p.Becomes).Order(StringComparer.Ordinal));
        }
    }

    /// <summary>A photo with marks, and one of a place, go among the book's pictures: named marks frame items, a mark without a name the entry's own, others are words.</summary>
    [Theory]
    [InlineData("horn", "photos/horn-039058c6.jpg", "bell,horn", "Marked: oil here.")]
    [InlineData(null, "photos/yard-039058c6.jpg", "bell", "Marked: oil here.")]
    public void Accept_APhotoWithMarks_IsAPictureOfTheBook(string? item, string file, string framed, string shows)
    {
        using TemporaryFolder folder = new();
        string path = Path.Combine(folder.Sub("heron"), "book.yaml");
        Directory.CreateDirectory(folder.Sub("heron"));
        File.WriteAllText(path, Book);
        using DataFolder data = DataFolder.Open(folder.Sub("data"));
        ProposalDesk desk = new(data, folder.Sub("heron"), TimeProvider.System);
        const string Marks = """[{"x":0.1,"y":0.2,"width":0.3,"height":0.25,"name":"Bell"},{"x":0.9,"y":0.9,"width":0.4,"height":0.1,"name":""},{"x":0,"y":0,"width":0.1,"height":0.1,"name":"oil here"}]""";
        WalkDownResult result = new("Heron", null, "the whole machine", s_phone, "Brandt",
            [new(IdOf(0), 1, "yard", item, FoundState.Seen, "", "", "", Marks, new([1, 2, 3], ".jpg", 1, 1), null, "Brandt", DateTimeOffset.UnixEpoch)], []);
        Assert.Equal(1, new WalkDownDesk(data, desk, TimeProvider.System).Take(result).Proposed);
        Proposal proposal = Assert.Single(desk.All());
        Assert.Equal((item ?? "yard", "picture", file), (proposal.Target, proposal.Property, proposal.Becomes));
        Assert.Contains("+    file: " + file, desk.Look(proposal).File!.Diff, StringComparison.Ordinal);
        Assert.Null(desk.Accept(proposal.Id, "Brandt"));
        Picture picture = Assert.Single(desk.Text.Book!.Pictures.Values);
        Assert.Equal((file, "yard", framed), (picture.File, picture.Place, string.Join(',', picture.Marks.Select(m => m.Item))));
        Assert.EndsWith(shows, picture.Shows, StringComparison.Ordinal);
        Assert.Equal([1, 2, 3], File.ReadAllBytes(Path.Combine(folder.Sub("heron"), file)));
        Assert.Equal(Book, File.ReadAllText(path));
        Assert.Equal("It is decided already.", desk.Accept(proposal.Id, "Brandt"));
    }

    private static Guid IdOf(int item) => Guid.Parse($"11111111-2222-4333-8444-55555555555{item}");

    private static WalkDownResult Result(int item, int revision) => new("Heron", null, "the whole machine", s_phone, "Brandt",
        [new(IdOf(item), revision, "yard", s_items[item], FoundState.Seen, $"{s_items[item]} {revision}", "", "", null, null, null, "Brandt", DateTimeOffset.UnixEpoch)], []);
}
