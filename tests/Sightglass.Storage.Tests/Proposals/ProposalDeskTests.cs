using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Sightglass.Storage.Proposals;
using Sightglass.Storage.WalkDowns;
using Sightglass.Training.Proposals;
using Sightglass.Training.WalkDowns;

namespace Sightglass.Storage.Tests.Proposals;

public sealed class ProposalDeskTests : IDisposable
{
    private const string Book = "book: Heron\nplaces: { yard: { x: 1 m, y: 2.4 m, z: 0 m } }\nitems:\n  horn: { places: [yard], for: Warns., normal: Loud. }\n  bell: { places: [yard], for: Warns., normal: Loud. }\n";

    private readonly TemporaryFolder _folder = new();
    private readonly DataFolder _data;
    private readonly WallClock _clock = new();
    private readonly ProposalDesk _desk;
    private readonly string _file;

    public ProposalDeskTests()
    {
        Directory.CreateDirectory(_folder.Sub("heron"));
        _file = Path.Combine(_folder.Sub("heron"), "book.yaml");
        File.WriteAllText(_file, Book);
        _data = DataFolder.Open(_folder.Sub("data"));
        _desk = new(_data, _folder.Sub("heron"), _clock);
    }

    public void Dispose()
    {
        _data.Dispose();
        _folder.Dispose();
    }

    [Fact]
    public void Accept_InOtherWords_TheBookSaysThemAndBothAreKept()
    {
        Proposal proposal = Found("horn", 1, "HORN LOUD");
        Assert.Contains("Horn, loud", _desk.Look(proposal, "Horn, loud").File!.Diff, StringComparison.Ordinal);
        Assert.Null(_desk.Accept(proposal.Id, "Brandt", " Horn, loud\r\n"));
        Assert.Equal("Horn, loud", _desk.Text.Book!.Items["horn"].Label);
        Proposal kept = Assert.Single(_desk.All());
        Assert.Equal(("HORN LOUD", "Horn, loud", ProposalState.Accepted), (kept.Becomes, kept.Edited, kept.State));
    }

    /// <summary>What is edited is proved like what is proposed; what cannot be written stays open, and the book as it was.</summary>
    [Theory]
    [InlineData("half \0 a letter")]
    [InlineData("   ")]
    public void Accept_WordsThatCannotBe_StaysOpen(string words)
    {
        Proposal proposal = Found("horn", 1, "HORN LOUD");
        Assert.NotNull(_desk.Accept(proposal.Id, "Brandt", words));
        Assert.Equal(ProposalState.Open, Assert.Single(_desk.All()).State);
        Assert.Equal(Book, File.ReadAllText(_file));
    }

    [Fact]
    public void Accept_TheWordsProposed_IsNotCalledEdited()
    {
        Proposal proposal = Found("horn", 1, "HORN LOUD");
        Assert.Null(_desk.Accept(proposal.Id, "Brandt", "HORN LOUD"));
        Assert.Null(Assert.Single(_desk.All()).Edited);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void Refuse_WithoutAReason_StaysOpenAndSaysWhatIsMissing(string why)
    {
        Proposal proposal = Found("horn", 1, "HORN LOUD");
        Assert.Contains("why not", _desk.Refuse(proposal.Id, "Brandt", why), StringComparison.Ordinal);
        Assert.Equal(ProposalState.Open, Assert.Single(_desk.All()).State);
    }

    /// <summary>A later one never takes an earlier one's number, though the computer's clock is put back and a proposal gives way to another.</summary>
    [Fact]
    public void Numbers_WithTheClockPutBack_Stay()
    {
        Found("horn", 1, "one");
        _clock.Now -= TimeSpan.FromDays(3);
        Found("bell", 1, "two");
        _clock.Now -= TimeSpan.FromDays(3);
        Found("horn", 2, "three");
        Assert.Equal([(1, "one", ProposalState.Refused), (2, "two", ProposalState.Open), (3, "three", ProposalState.Open)], _desk.All().Select(p => (p.Number, p.Becomes, p.State)));
    }

    /// <summary>A data folder of the release before: each book's proposals keep the places they were shown at.</summary>
    [Fact]
    public void Open_ADatabaseWithoutNumbers_GivesThemByPlace()
    {
        string folder = _folder.Sub("old");
        Directory.CreateDirectory(folder);
        using (RecordsContext records = new($"Data Source={Path.Combine(folder, "sightglass.db")};Pooling=False"))
        {
            records.Database.GetService<IMigrator>().Migrate("Beginning");
            foreach ((string book, int at, string id) in new[] { ("Heron", 5, "3"), ("Heron", 2, "9"), ("Egret", 1, "1"), ("Heron", 5, "1") })
            {
                string guid = $"00000000-0000-0000-000{(book == "Heron" ? 0 : 1)}-00000000000{id}";
                records.Database.ExecuteSql($"INSERT INTO Proposals (Id, Book, Origin, Target, Property, Becomes, Why, \"By\", At, State) VALUES ({guid}, {book}, 'Hand', 'horn', 'label', {id}, '', '', {at}, 'Open')");
            }
        }

        using DataFolder data = DataFolder.Open(folder);
        Assert.Equal([(1, "9"), (2, "1"), (3, "3")], new ProposalDesk(data, _folder.Sub("heron"), _clock).All().Select(p => (p.Number, p.Becomes)));
    }

    private Proposal Found(string item, int revision, string label)
    {
        Guid id = Guid.Parse($"11111111-2222-4333-8444-55555555555{(item == "horn" ? 1 : 2)}");
        WalkDownResult result = new("Heron", null, "the whole machine", Guid.Parse("6f2b1b44-6a55-4a3c-9a0e-0d1f2b3c4d5e"), "Brandt", [new(id, revision, "yard", item, FoundState.Seen, label, "", "", null, null, null, "Brandt", DateTimeOffset.UnixEpoch)], []);
        Assert.Equal(1, new WalkDownDesk(_data, _desk, _clock).Take(result).Proposed);
        return _desk.All().Single(p => p.Becomes == label);
    }

    private sealed class WallClock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2026, 11, 26, 8, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
