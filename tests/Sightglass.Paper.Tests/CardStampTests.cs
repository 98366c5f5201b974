using Sightglass.Paper.Document;
using Sightglass.Paper.Html;
using Sightglass.Paper.Papers;

namespace Sightglass.Paper.Tests;

/// <summary>The stamp says how far the card has come, with names and days, and warns where nobody is to work by it.</summary>
public sealed class CardStampTests
{
    private static readonly CardStamp s_stamp = new(["Tried by simulation in 512 cases."], "Curlew, edition 1.", new DateOnly(2026, 11, 26), null);

    [Fact]
    public void Stamp_OfADraft_Warns() => Assert.Equal(["DRAFT of 2026-11-26, approved by nobody. Not to be worked by.", "Tried by simulation in 512 cases.", "Curlew, edition 1."], Lines(s_stamp)[..3]);

    [Fact]
    public void Stamp_OfAnApprovedCard_NamesWho() => Assert.Equal("Approved by C. Okafor, 2026-11-26.", Lines(s_stamp with { ApprovedBy = "C. Okafor" })[0]);

    [Fact]
    public void Stamp_OfAnEdition_TellsItsWayAndWarnsWhereItIsWithdrawn()
    {
        CardStamp approved = s_stamp with { ApprovedBy = "C. Okafor", History = ["Edition 1, written by A. Nowak, 2026-11-24.", "Approved by C. Okafor, 2026-11-25."] };
        Assert.Equal(["Edition 1, written by A. Nowak, 2026-11-24.", "Approved by C. Okafor, 2026-11-25."], Lines(approved)[..2]);
        Assert.Equal("WITHDRAWN. Not to be worked by.", Lines(approved with { Warning = "WITHDRAWN. Not to be worked by." })[0]);
    }

    [Fact]
    public void Page_OfACard_EscapesWhatPeopleWrite()
    {
        string page = HtmlPage.Write(Of(s_stamp with { ApprovedBy = "<b>&" }));
        Assert.Contains("Approved by &lt;b&gt;&amp;, 2026-11-26.", page, StringComparison.Ordinal);
    }

    private static string[] Lines(CardStamp stamp) => [.. Of(stamp).Blocks.OfType<PaperBlock.Box>().Single().Blocks.OfType<PaperBlock.Paragraph>().Select(p => p.Text.Plain)];

    private static PaperDocument Of(CardStamp stamp) => CardPaper.Of(Papers.ReadCard("drain-water"), stamp, Papers.Book);
}
