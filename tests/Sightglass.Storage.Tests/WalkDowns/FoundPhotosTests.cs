using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Storage.Proposals;
using Sightglass.Storage.WalkDowns;
using Sightglass.Training.Proposals;
using Sightglass.Training.WalkDowns;

namespace Sightglass.Storage.Tests.WalkDowns;

/// <summary>A photo of a walk-down is a picture of its machine until somebody has decided on it.</summary>
public sealed class FoundPhotosTests
{
    private const string Text = "book: Heron\nplaces: { yard: { x: 1 m, y: 2.4 m, z: 0 m } }\nroad numbers: { 7: {}, 8: {} }\nitems:\n  horn: { places: [yard], for: Warns., normal: Loud. }\n";

    private static readonly byte[] s_photo = [1, 2, 3];

    [Fact]
    public void Into_APhotoOfARoadNumber_IsOfThatMachineAlone()
    {
        using TemporaryFolder folder = new();
        ClassBook book = Read(folder);
        using DataFolder data = DataFolder.Open(folder.Sub("data"));
        Take(data, folder);
        FoundPhotos found = new(data);
        Picture picture = Assert.Single(found.Into(book.For("7")).PicturesOf(book.Items["horn"]));
        Assert.Equal("horn, as found by Brandt", picture.Name);
        Assert.Equal(s_photo, found.Open(picture));
        Assert.Empty(found.Into(book.For("8")).PicturesOf(book.Items["horn"]));
        Assert.Empty(found.Into(book).PicturesOf(book.Items["horn"]));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Into_APhotoThatIsDecidedOn_IsFoundNoMore(bool accepted)
    {
        using TemporaryFolder folder = new();
        ClassBook book = Read(folder);
        using DataFolder data = DataFolder.Open(folder.Sub("data"));
        ProposalDesk desk = Take(data, folder);
        Proposal proposal = Assert.Single(desk.All());
        Assert.Null(accepted ? desk.Accept(proposal.Id, "Okafor") : desk.Refuse(proposal.Id, "Okafor", "A thumb is on it."));
        Assert.Empty(new FoundPhotos(data).Into(book.For("7")).Pictures);
    }

    [Fact]
    public void Open_APictureOfTheBook_IsNotInTheDataFolder()
    {
        using TemporaryFolder folder = new();
        using DataFolder data = DataFolder.Open(folder.Sub("data"));
        Assert.Null(new FoundPhotos(data).Open(new Picture("horn", default, "photos/horn.jpg", "")));
        Assert.Null(new FoundPhotos(data).Open(new Picture("horn", default, FoundPhotos.Root + "../../sightglass.db", "")));
    }

    private static ClassBook Read(TemporaryFolder folder)
    {
        Directory.CreateDirectory(folder.Sub("heron"));
        File.WriteAllText(Path.Combine(folder.Sub("heron"), "book.yaml"), Text);
        return BookReader.Read(folder.Sub("heron"), KindLibrary.Catalog, [])!;
    }

    private static ProposalDesk Take(DataFolder data, TemporaryFolder folder)
    {
        ProposalDesk desk = new(data, folder.Sub("heron"), TimeProvider.System);
        WalkDownResult result = new("Heron", "7", "the whole machine", Guid.Parse("6f2b1b44-6a55-4a3c-9a0e-0d1f2b3c4d5e"), "Brandt",
            [new(Guid.Parse("0b1c2d3e-4f50-4162-8374-95a6b7c8d9e0"), 1, "yard", "horn", FoundState.Differs, "", "", "", null, new(s_photo, ".jpg", 1, 1), null, "Brandt", DateTimeOffset.UnixEpoch)], []);
        new WalkDownDesk(data, desk, TimeProvider.System).Take(result);
        return desk;
    }
}
