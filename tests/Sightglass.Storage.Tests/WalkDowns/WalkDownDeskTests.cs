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

    private static Guid IdOf(int item) => Guid.Parse($"11111111-2222-4333-8444-55555555555{item}");

    private static WalkDownResult Result(int item, int revision) => new("Heron", null, "the whole machine", s_phone, "Brandt",
        [new(IdOf(item), revision, "yard", s_items[item], FoundState.Seen, $"{s_items[item]} {revision}", "", "", null, null, null, "Brandt", DateTimeOffset.UnixEpoch)], []);
}
