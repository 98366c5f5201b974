using System.Text;
using CsCheck;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Hostile;
using Sightglass.Book.Tests.Sheets;
using Sightglass.Tests.Support;

namespace Sightglass.Book.Tests.Recordings;

/// <summary>Whatever stands in a file and its mapping, reading gives rows or errors with places, and never throws.</summary>
public sealed class RecordingProperties : IDisposable
{
    private const string Csv = "Time,\"V [m/s]\",W\r\n14:02:00,1.5,\"a\"\r\n14:02:01,2.5,b\r\n\r\n14:02:03,-1e1,\r\n";
    private const string Yaml = "book: A\nrecordings:\n  r: { file: r.csv, time: Time, missing: x, columns: [{ column: \"V [m/s]\", sets: speed, compares: speed, within: 1 mph }] }\nsituations:\n  s: { states: { recording: r, from: \"14:02:00\", every: 1 s } }\n";
    private const string Signs = "{}[]:,-#'\"\n\r\t;0:14.eE+x\0é=";

    private static readonly Gen<(double At, int Out, string In)[]> s_edits =
        Gen.Select(Gen.Double[0, 1], Gen.Int[0, 12], Gen.Char[Signs].Array[0, 3].Select(c => new string(c)), (at, take, put) => (at, take, put)).Array[1, 6];

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Read_AnyEditsOfTheFile_GiveRowsOrErrorsWithPlaces() => s_edits.Holds(edits => Check(Edited(Csv, edits), Yaml), iter: 250);

    [Fact]
    public void Read_AnyEditsOfTheMapping_GiveRowsOrErrorsWithPlaces() => s_edits.Holds(edits => Check(Csv, Edited(Yaml, edits)), iter: 250);

    [Fact]
    public void Read_AnyBytes_GiveRowsOrErrors() => Gen.Byte.Array[0, 200].Holds(bytes =>
    {
        File.WriteAllBytes(Path.Combine(_folder.Path, "r.csv"), bytes);
        Read(Yaml);
    });

    private void Check(string csv, string yaml)
    {
        _folder.Write("r.csv", csv);
        (ClassBook? book, DiagnosticList found) = Read(yaml);
        Assert.Equal(book is null, found.HasErrors);
        Assert.All(found, d => Assert.True(d.Span.Start >= 0 && d.Span.End <= (d.Span.Source?.Text.Length ?? 0) && d.ToString().Length > 0));
        foreach (Situation situation in book?.Situations.Values.Where(s => s.States is not null) ?? [])
        {
            Assert.All(situation.States!.Rows, row => Assert.InRange(row, 0, situation.States.Of!.Table!.Rows - 1));
        }
    }

    private (ClassBook? Book, DiagnosticList Found) Read(string yaml)
    {
        _folder.Write("a.yaml", yaml);
        DiagnosticList found = [];
        ClassBook? book = BookReader.Read(_folder.Path, TestKinds.Catalog, found);
        return (book, found);
    }

    private static string Edited(string of, (double At, int Out, string In)[] edits)
    {
        StringBuilder text = new(of);
        foreach ((double at, int take, string put) in edits)
        {
            int start = (int)(at * text.Length);
            text.Remove(start, Math.Min(take, text.Length - start)).Insert(start, put);
        }

        return text.ToString();
    }
}
