using Sightglass.Book.Changes;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Hostile;
using Sightglass.Book.Tests.Sheets;

namespace Sightglass.Book.Tests.Changes;

/// <summary>On the disk.</summary>
public sealed class BookChangesTests
{
    private const string Head = "\uFEFFbook: Heron\nplaces: { yard: { x: 1 m, y: 2.4 m, z: 0 m } }\n";
    private const string Items = "items:\n  horn: { places: [yard], for: Warns., normal: Loud. }\n";

    [Fact]
    public void Apply_AChange_WritesThatFileAloneAndLeavesNothingBeside()
    {
        using TemporaryFolder folder = new();
        string head = folder.Write("book.yaml", Head), items = folder.Write("more/items.yaml", Items);
        BookChanges book = new(folder.Path, TestKinds.Catalog);
        Assert.Null(book.Apply(new("horn", "normal", "Quiet.") { Was = "Loud." }).Refused);
        Assert.Equal("items:\n  horn: { places: [yard], for: Warns., normal: Quiet. }\n", File.ReadAllText(items));
        Assert.Null(book.Apply(new("yard", "text", "Right.")).Refused);
        Assert.Equal([0xEF, 0xBB, 0xBF], File.ReadAllBytes(head)[..3]);
        Assert.Equal(["book.yaml", "more/items.yaml"], Directory.GetFiles(folder.Path, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder.Path, f)).Order());
        Assert.Contains("by now `Quiet.`", book.Apply(new("horn", "normal", "Loud.") { Was = "Loud." }).Refused, StringComparison.Ordinal);
    }

    [Fact]
    public void Apply_WhatIsWrong_WritesNothing()
    {
        using TemporaryFolder folder = new();
        string path = folder.Write("book.yaml", Head + Items);
        byte[] before = File.ReadAllBytes(path);
        Assert.NotNull(new BookChanges(folder.Path, TestKinds.Catalog).Apply(new("horn", "system", "air")).Refused);
        Assert.Contains("there is no folder", new BookChanges(Path.Combine(folder.Path, "none"), TestKinds.Catalog).Apply(new("horn", "label", "x")).Refused, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(path));
        Assert.Single(Directory.GetFiles(folder.Path));
    }

    [Fact]
    public void ApplyPhoto_OfAnItem_PutsThePictureBelowTheBook()
    {
        using TemporaryFolder folder = new();
        folder.Write("book.yaml", Head + Items);
        BookChanges book = new(folder.Path, TestKinds.Catalog);
        ChangePlan plan = book.ApplyPhoto(new("horn", "photo", null), [1, 2, 3], ".jpg");
        Assert.Null(plan.Refused);
        string photo = book.Read().Book!.Items["horn"].Photo!;
        Assert.StartsWith("photos/horn-", photo, StringComparison.Ordinal);
        Assert.Equal([1, 2, 3], File.ReadAllBytes(Path.Combine(folder.Path, photo)));
        Assert.NotNull(book.ApplyPhoto(new("trumpet", "photo", null), [1], ".jpg").Refused);
        Assert.Equal(2, Directory.GetFiles(folder.Path, "*", SearchOption.AllDirectories).Length);
    }

    private static Picture Horn(string name, string item = "horn") => new(name, default, $"photos/{name}.jpg", "The horn: on the roof.")
    {
        Place = "yard",
        Marks = [new(item, 0.4, 0.55, 0.1, 0.2)],
    };

    [Theory]
    [InlineData("", "pictures.yaml", "pictures:\n  roof:\n    file: photos/roof.jpg\n    shows: \"The horn: on the roof.\"\n    place: yard\n    marks:\n      - item: horn\n        x: 40.0 %\n        y: 55.0 %\n        width: 10.0 %\n        height: 20.0 %\n")]
    [InlineData("pictures:\n  old: { file: a.jpg, shows: Nothing. }   # the first\n", "book.yaml", "   # the first\n  roof:\n    file: photos/roof.jpg\n")]
    [InlineData("pictures: { old: { file: a.jpg, shows: Nothing. } }\n", "book.yaml", "shows: Nothing. }, roof: { file: photos/roof.jpg, shows: \"The horn: on the roof.\", place: yard, marks: [{ item: horn,")]
    [InlineData("pictures:\n", "book.yaml", "pictures:\n  roof:\n    file:")]
    public void ApplyPicture_WithMarks_IsAddedBehindTheOthers(string section, string file, string expected)
    {
        using TemporaryFolder folder = new();
        folder.Write("book.yaml", Head + Items + section);
        BookChanges book = new(folder.Path, TestKinds.Catalog);
        Assert.Null(book.ApplyPicture(Horn("roof"), [1, 2, 3]).Refused);
        Assert.Contains(expected, File.ReadAllText(Path.Combine(folder.Path, file)), StringComparison.Ordinal);
        Assert.Equal(["horn 0.4 0.55 0.1 0.2"], book.Read().Book!.Pictures["roof"].Marks.Select(m => FormattableString.Invariant($"{m.Item} {m.X} {m.Y} {m.Width} {m.Height}")));
        Assert.Equal([1, 2, 3], File.ReadAllBytes(Path.Combine(folder.Path, "photos/roof.jpg")));
        Assert.Contains("has an entry `roof` already", book.ApplyPicture(Horn("roof"), [1]).Refused, StringComparison.Ordinal);
        Assert.Null(book.ApplyPicture(Horn("side"), [4]).Refused);
        Assert.Contains("trumpet", book.ApplyPicture(Horn("end", "trumpet"), [1]).Refused, StringComparison.Ordinal);
        Assert.Equal(2, Directory.GetFiles(Path.Combine(folder.Path, "photos")).Length);
    }
}
