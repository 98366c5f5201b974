using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Sightglass.Training.Papers;
using Sightglass.Training.Questions;

namespace Sightglass.Storage.Tests;

public sealed class DataFolderTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Open_TheSameFolderTwice_IsRefusedWithASentence()
    {
        using (DataFolder.Open(_folder.Path))
        {
            DataFolderException refused = Assert.Throws<DataFolderException>(() => DataFolder.Open(_folder.Path));
            Assert.Contains($"already open by process {Environment.ProcessId}", refused.Message, StringComparison.Ordinal);
            Assert.Contains("--data", refused.Message, StringComparison.Ordinal);
        }

        using DataFolder again = DataFolder.Open(_folder.Path);
        Assert.Equal(_folder.Path, again.Path);
    }

    [Fact]
    public void Open_AFileOrAPathBelowOne_SaysWhatIsNeeded()
    {
        string file = _folder.Sub("file");
        File.WriteAllText(file, "");
        Assert.Contains("is a file, and the data needs a folder", Assert.Throws<DataFolderException>(() => DataFolder.Open(file)).Message, StringComparison.Ordinal);
        Assert.Contains("cannot be made", Assert.Throws<DataFolderException>(() => DataFolder.Open(Path.Combine(file, "below"))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_ADamagedDatabase_SaysSoAndLeavesItAsItIs()
    {
        string database = _folder.Sub("sightglass.db");
        byte[] noise = [.. Enumerable.Range(0, 5000).Select(i => (byte)(i * 31))];
        File.WriteAllBytes(database, noise);
        Assert.Contains("cannot be read", Assert.Throws<DataFolderException>(() => DataFolder.Open(_folder.Path)).Message, StringComparison.Ordinal);
        Assert.Equal(noise, File.ReadAllBytes(database));
    }

    [Fact]
    public void Open_ADatabaseOfANewerProgram_IsRefused()
    {
        using (DataFolder folder = DataFolder.Open(_folder.Path))
        using (RecordsContext records = folder.Records())
        {
            records.Database.ExecuteSql($"INSERT INTO __EFMigrationsHistory VALUES ('29991231000000_Later', '99.0')");
        }

        Assert.Contains("written by a newer Sightglass", Assert.Throws<DataFolderException>(() => DataFolder.Open(_folder.Path)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Migrations_AgainstTheModel_LackNothing()
    {
        using DataFolder folder = DataFolder.Open(_folder.Path);
        using RecordsContext records = folder.Records();
        Assert.False(records.Database.HasPendingModelChanges(), "A type in Training changed: add a migration (CONTRIBUTING).");
    }

    [Fact]
    public void Records_OfEverySort_ComeBackAsTheyWere()
    {
        using DataFolder folder = DataFolder.Open(_folder.Path);
        List<object> kept = [];
        using (RecordsContext records = folder.Records())
        {
            // Those that others point at come first.
            foreach (IEntityType type in records.Model.GetEntityTypes().OrderBy(t => t.GetForeignKeys().Count()))
            {
                object one = RecordDraw.One(type, kept);
                kept.Add(one);
                records.Add(one);
            }

            records.SaveChanges();
        }

        Assert.True(kept.Count >= 10);
        foreach (object was in kept)
        {
            using RecordsContext records = folder.Records();
            object now = records.Find(was.GetType(), was.GetType().GetProperty("Id")!.GetValue(was))!;
            Assert.NotSame(was, now);
            Assert.Equivalent(was, now, strict: true);
        }
    }

    [Fact]
    public void Records_ByInstant_AreOrderedByTheDatabase()
    {
        using DataFolder folder = DataFolder.Open(_folder.Path);
        using RecordsContext records = folder.Records();
        TimeSpan[] zones = [TimeSpan.FromHours(9), TimeSpan.Zero, TimeSpan.FromHours(-8)];
        records.AddRange(zones.Select((zone, i) => Question($"{i}", new DateTimeOffset(2028, 2, 29, 12, 0, 0, zone))));
        records.SaveChanges();
        Assert.Equal(["0", "1", "2"], records.Questions.OrderBy(q => q.AskedAt).Select(q => q.Text));
    }

    [Fact]
    public void Folder_CopiedWhileItIsOpen_HoldsAllThatWasAcknowledged()
    {
        string copy = _folder.Sub("copy");
        using DataFolder folder = DataFolder.Open(_folder.Sub("data"));
        string photo = folder.Files.Put([1, 2, 3]);
        using (RecordsContext records = folder.Records())
        {
            records.Add(Question("which way is it open", DateTimeOffset.UnixEpoch));
            records.SaveChanges();
        }

        foreach (string file in Directory.EnumerateFiles(folder.Path, "*", SearchOption.AllDirectories).Where(f => !f.EndsWith("lock", StringComparison.Ordinal)))
        {
            string to = Path.Combine(copy, Path.GetRelativePath(folder.Path, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }

        using DataFolder copied = DataFolder.Open(copy);
        using RecordsContext there = copied.Records();
        Assert.Equal("which way is it open", there.Questions.Single().Text);
        using FileStream back = copied.Files.Open(photo)!;
        Assert.Equal([1, 2, 3], [(byte)back.ReadByte(), (byte)back.ReadByte(), (byte)back.ReadByte()]);
    }

    [Fact]
    public void Copies_OfOneEdition_HaveNumbersOfTheirOwn()
    {
        using DataFolder folder = DataFolder.Open(_folder.Path);
        using RecordsContext records = folder.Records();
        IEntityType type = records.Model.FindEntityType(typeof(PaperEdition))!;
        PaperEdition edition = (PaperEdition)RecordDraw.One(type, []);
        records.Add(edition);
        records.AddRange(Enumerable.Range(0, 2).Select(_ => new PaperCopy { Id = Guid.NewGuid(), Edition = edition.Id, Number = 1, Holder = "a holder", GivenAt = DateTimeOffset.UnixEpoch }));
        Assert.Throws<DbUpdateException>(() => records.SaveChanges());
    }

    private static OpenQuestion Question(string text, DateTimeOffset asked) => new()
    {
        Id = Guid.NewGuid(),
        Book = "a book",
        Text = text,
        AskedBy = "",
        AskedAt = asked,
        Owner = "an owner",
        Due = new(2028, 2, 29),
    };
}
