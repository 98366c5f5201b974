using System.Diagnostics;
using System.Text;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Sheets;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Tests.Hostile;

public sealed class HostileFolderTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Read_FolderThatIsNotThere_IsB001() => Assert.Equal(["B001"], Codes(Path.Combine(_folder.Path, "none")));

    [Fact]
    public void Read_FolderWithoutYaml_IsB002()
    {
        _folder.Write("readme.txt", "hello");
        Assert.Equal(["B002"], Codes());
    }

    [Fact]
    public void Read_HundredMegabytes_IsB003WithoutBeingRead()
    {
        using (FileStream big = File.Create(Path.Combine(_folder.Path, "big.yaml")))
        {
            big.SetLength(100L << 20);
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(["B003"], Codes());
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 1 << 20);
    }

    [Fact]
    public void Read_ManyLargeFiles_IsB003FromTheTotal()
    {
        _folder.Write("a.yaml", "book: A\n");
        for (int i = 0; i < 3; i++)
        {
            _folder.Write($"b{i}.yaml", "#" + new string('x', 400));
        }

        Assert.Equal(["B003"], Codes(limits: YamlLimits.Default with { TotalBytes = 1_000 }));
    }

    [Theory]
    [InlineData(new byte[] { 0x62, 0x3A, 0x20, 0x41, 0x0A, 0x63, 0xFF, 0x0A }, "2:2")]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x62, 0x00 }, "1:1")]
    [InlineData(new byte[] { 0xFE, 0xFF, 0x00, 0x62 }, "1:1")]
    [InlineData(new byte[] { 0x62, 0xC3 }, "1:2")]
    [InlineData(new byte[] { 0xED, 0xA0, 0x80 }, "1:1")]
    public void Read_BytesThatAreNotUtf8_IsB004AtTheByte(byte[] bytes, string place)
    {
        File.WriteAllBytes(Path.Combine(_folder.Path, "a.yaml"), bytes);
        DiagnosticList found = [];
        Assert.Null(Read(found));
        Diagnostic d = Assert.Single(found);
        Assert.Equal(("B004", $"a.yaml:{place}"), (d.Code, d.Span.ToString()));
    }

    [Fact]
    public void Read_Utf8WithByteOrderMark_IsGood()
    {
        File.WriteAllBytes(Path.Combine(_folder.Path, "a.yaml"), [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes("book: Größe\n")]);
        Assert.Equal("Größe", Read([])!.Title);
    }

    [Fact]
    public void Read_LinkToAFileOutside_IsB005()
    {
        _folder.Write("a.yaml", "book: A\n");
        File.CreateSymbolicLink(Path.Combine(_folder.Path, "b.yaml"), "/etc/passwd");
        Assert.Equal(["B005"], Codes());
    }

    [Fact]
    public void Read_LinkToTheFolderItself_IsB005AndEnds()
    {
        _folder.Write("a.yaml", "book: A\n");
        Directory.CreateSymbolicLink(Path.Combine(_folder.Path, "loop"), _folder.Path);
        Assert.Equal(["B005"], Codes());
    }

    [Fact]
    public void Read_TooManyEntries_IsB006()
    {
        for (int i = 0; i < 30; i++)
        {
            _folder.Write($"{i}.txt", "");
        }

        Assert.Equal(["B006"], Codes(limits: YamlLimits.Default with { FolderEntries = 20 }));
    }

    [Fact]
    public void Read_FoldersInFolders_IsB006()
    {
        _folder.Write(string.Join('/', Enumerable.Repeat("d", 40)) + "/a.yaml", "book: A\n");
        Assert.Equal(["B006"], Codes());
    }

    [Fact]
    public void Read_FileThatCannotBeOpened_IsB007()
    {
        string path = _folder.Write("a.yaml", "book: A\n");
        using FileStream locked = new(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        Assert.Equal(["B007"], Codes());
    }

    [Fact]
    public void Read_Pipe_IsTakenForAnEmptyFileAndDoesNotHang()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "pipes are made with mkfifo");
        _folder.Write("a.yaml", "book: A\n");
        using Process make = Process.Start("mkfifo", Path.Combine(_folder.Path, "b.yaml"));
        make.WaitForExit();
        Assert.NotNull(Read([]));
    }

    [Fact]
    public void Read_FolderNamedLikeAFile_IsWalkedInto()
    {
        _folder.Write("a.yaml/b.yaml", "book: A\n");
        Assert.NotNull(Read([]));
    }

    [Fact]
    public void Read_HiddenFolders_ArePassedOver()
    {
        _folder.Write("a.yaml", "book: A\n");
        _folder.Write(".git/b.yaml", "{{{{");
        Assert.NotNull(Read([]));
    }

    [Fact]
    public void Read_PictureThatIsNotThere_IsB085()
    {
        _folder.Write("a.yaml", "book: A\nitems:\n  horn: { photo: p/horn.jpg }\n  bell: { photo: p/bell.jpg }\n");
        _folder.Write("p/bell.jpg", "");
        DiagnosticList found = [];
        Assert.NotNull(Read(found));
        Assert.Contains("p/horn.jpg", Assert.Single(found, d => d.Code == "B085").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_FilesOfAFolder_AreNamedRelativeToIt()
    {
        _folder.Write("sub/a.yaml", "book: A\nlenght: 3 m\n");
        DiagnosticList found = [];
        Read(found);
        Assert.StartsWith("sub/a.yaml:2:1: B030:", Assert.Single(found).ToString(), StringComparison.Ordinal);
    }

    private ClassBook? Read(DiagnosticList found) => BookReader.Read(_folder.Path, TestKinds.Catalog, found);

    private string[] Codes(string? folder = null, YamlLimits? limits = null)
    {
        DiagnosticList found = [];
        Assert.Null(BookReader.Read(folder ?? _folder.Path, TestKinds.Catalog, found, limits: limits));
        return [.. found.Select(d => d.Code).Distinct()];
    }
}
