using System.Runtime.CompilerServices;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Tests.Samples;

namespace Sightglass.Book.Tests.Golden;

/// <summary>
/// For each code a small book (<c>B030.yaml</c>) and the lines it gives (<c>diagnostics.verified.txt</c>). Set SIGHTGLASS_ACCEPT=1 to write
/// the lines anew, then read the difference.
/// </summary>
public class GoldenDiagnosticsTests
{
    /// <summary>Codes about folders, limits, pictures and recorded files; tested where their folders are made.</summary>
    private static readonly string[] s_elsewhere = ["B001", "B002", "B003", "B004", "B005", "B006", "B007", "B015", "B020", "B021", "B085", "B110", "B111", "B112", "B113", "B114"];

    public static TheoryData<string> Codes => [.. BookCodes.All.Select(c => c.Code).Except(s_elsewhere)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Read_ExampleOfCode_GivesTheVerifiedLines(string code)
    {
        string[] lines = Lines(code);
        GoldenLines golden = GoldenLines.Load();
        if (GoldenLines.Accepting)
        {
            golden.Accept(code, lines);
        }

        Assert.Equal(golden[code], lines);
        Assert.Contains(lines, l => l.Contains($": {code}", StringComparison.Ordinal));
    }

    [Fact]
    public void Codes_OfAllFindings_AreListedWithTheirSeverity()
    {
        Dictionary<string, Severity> listed = BookCodes.All.ToDictionary(c => c.Code, c => c.Severity);
        foreach (Diagnostic d in listed.Keys.Except(s_elsewhere).SelectMany(c => SampleBook.Read(Text(c)).Found).Where(d => d.Code.StartsWith('B')))
        {
            Assert.Equal(listed[d.Code], d.Severity);
        }
    }

    internal static string[] Lines(string code) => [.. SampleBook.Read(Text(code)).Found.Select(d => d.ToString())];

    private static string Text(string code, [CallerFilePath] string here = "") => File.ReadAllText(Path.Combine(Path.GetDirectoryName(here)!, $"{code}.yaml"));
}
