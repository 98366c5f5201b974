using Sightglass.Book.Recordings;

namespace Sightglass.Book.Tests.Recordings;

/// <summary>Fields of comma-separated text as RFC 4180 has them (from memory).</summary>
public sealed class CsvScannerTests
{
    [Theory]
    [InlineData("a,b,c\r\nd,e,f\r\n", "a|b|c/d|e|f")]
    [InlineData("a,b\nc,d", "a|b/c|d")]
    [InlineData("a,b\rc,d\r", "a|b/c|d")]
    [InlineData("\"a\",\"b,c\",\"d\"\"e\"\n", "a|b,c|d\"e")]
    [InlineData("\"two\r\nlines\",x\n", "two\r\nlines|x")]
    [InlineData(",,\n", "||")]
    [InlineData("\n\na\n", "//a")]
    [InlineData(" a , b \n", "a|b")]
    [InlineData("5\" pipe,x\n", "5\" pipe|x")]
    [InlineData("\"\"", "")]
    public void Next_RowsAsTheyAreWritten_AreTakenApart(string text, string fields) => Assert.Equal(fields, string.Join('/', Rows(text, ',').Select(r => string.Join('|', r))));

    [Fact]
    public void Next_EmptyText_HasNoRow() => Assert.Empty(Rows("", ','));

    [Theory]
    [InlineData("a,\"b\nc,d\n", CsvFlaw.NotClosed, 2)]
    [InlineData("a,\"b\"c\n", CsvFlaw.AfterQuote, 5)]
    [InlineData("a\n\"", CsvFlaw.NotClosed, 2)]
    public void Next_QuoteThatIsWrong_StopsThere(string text, CsvFlaw flaw, int at)
    {
        CsvScanner scanner = new(text, ',');
        while (scanner.Next())
        {
        }

        Assert.Equal((flaw, at), (scanner.Flaw, scanner.FlawAt));
        Assert.False(scanner.Next());
    }

    [Theory]
    [InlineData('x', CsvFlaw.TooLong)]
    [InlineData(',', CsvFlaw.TooManyFields)]
    public void Next_MoreThanARecorderWrites_IsRefused(char sign, CsvFlaw flaw)
    {
        CsvScanner scanner = new(new string(sign, 20_000), ',');
        Assert.False(scanner.Next());
        Assert.Equal(flaw, scanner.Flaw);
    }

    internal static List<string[]> Rows(string text, char separator)
    {
        CsvScanner scanner = new(text, separator);
        List<string[]> rows = [];
        while (scanner.Next())
        {
            rows.Add([.. scanner.Fields.Select(scanner.Text)]);
        }

        return rows;
    }
}
