using CsCheck;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Recordings;
using Sightglass.Book.Tests.Samples;
using Sightglass.Tests.Support;

namespace Sightglass.Book.Tests.Recordings;

/// <summary>What a file shows by itself, and the mapping that is made of it.</summary>
public sealed class RecordingLookTests
{
    [Fact]
    public void At_TitleOverHeads_SemicolonsAndCommas_AreSeen()
    {
        RecordingLook look = Look("Export 2031;;\n\nZeit;\"HBL; (bar)\";V (km/h)\n10:00:00;7,58;0\n10:00:05;7,50;--\n10:00:06;;12\n");
        Assert.Equal((';', true, "Zeit", 3, 3), (look.Separator, look.HasDecimalComma, look.Time, look.Rows, look.HeadLine));
        Assert.Equal(["Zeit", "HBL; (bar)", "V (km/h)"], look.Columns.Select(c => c.Head));
        Assert.Equal(["bar", "km/h"], look.Columns.Skip(1).Select(c => c.Unit!.Symbol));
        Assert.Equal("HBL; (bar): 7.5 .. 7.58", look.Columns[1].Says);
        Assert.Contains("    decimal: comma\n    heads in line: 3\n    missing:\n      - \"--\"\n", look.Mapping("x").Source.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void At_TitleWithoutSeparators_DoesNotHideThem()
    {
        RecordingLook look = Look("Export of something\nT,V\n1,2.5\n");
        Assert.Equal((',', false, 2), (look.Separator, look.HasDecimalComma, look.HeadLine));
    }

    /// <summary>Heads come from a stranger's file: whatever they hold, the mapping is one that the book reads.</summary>
    [Fact]
    public void Mapping_OfAnyHeads_IsReadByTheBook() => Gen.Char["ab:#\\\"'{}[],\t\n%=é -"].Array[1, 12].Select(c => new string(c)).Array[2, 4].Holds(heads =>
    {
        DiagnosticList found = [];
        string csv = string.Join(',', heads.Select(h => $"\"{h.Replace("\"", "\"\"", StringComparison.Ordinal)}\"")) + "\n1,x\n";
        if (RecordingLook.At(new SourceText("a.csv", csv), found) is { } look)
        {
            (_, DiagnosticList read) = SampleBook.Read("book: A\nplaces: { yard: { x: 1 m, y: 2 m, z: 0 m } }\n", look.Mapping("a recording").Source.Text);
            Assert.Empty(read);
        }
    });

    private static RecordingLook Look(string csv)
    {
        DiagnosticList found = [];
        return RecordingLook.At(new SourceText("a.csv", csv), found) ?? throw new InvalidOperationException(string.Join('\n', found));
    }
}
