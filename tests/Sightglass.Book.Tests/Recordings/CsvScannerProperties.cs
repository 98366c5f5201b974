using CsCheck;
using Sightglass.Book.Recordings;
using Sightglass.Tests.Support;

namespace Sightglass.Book.Tests.Recordings;

public sealed class CsvScannerProperties
{
    private const string Signs = "ab1,;\t\"\n\r é=+-@";

    private static readonly Gen<string[][]> s_table = Gen.Char[Signs].Array[0, 8].Select(c => new string(c).Trim()).Array[2, 5].Array[1, 6];

    [Fact]
    public void Rows_WrittenByTheRules_AreReadBack() => Gen.Select(s_table, Gen.Char[",;\t"], Gen.Bool.Select(b => b ? "\r\n" : "\n")).Holds((table, separator, end) =>
    {
        string text = string.Concat(table.Select(row => string.Join(separator, row.Select(Quoted)) + end));
        Assert.Equal(table, CsvScannerTests.Rows(text, separator));
    });

    [Fact]
    public void Next_AnyText_EndsWithFieldsWithinIt() => Gen.Char[Signs].Array[0, 60].Select(c => new string(c)).Holds(
        text =>
        {
            CsvScanner scanner = new(text, ',');
            int before = -1;
            while (scanner.Next())
            {
                Assert.All(scanner.Fields, f => Assert.True(f.Start >= 0 && f.Start <= f.End && f.End <= text.Length));
                Assert.True(scanner.Fields[0].Start > before);
                before = scanner.Fields[0].Start;
            }

            Assert.InRange(scanner.FlawAt, 0, text.Length);
        },
        iter: 300);

    private static string Quoted(string text) => $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
