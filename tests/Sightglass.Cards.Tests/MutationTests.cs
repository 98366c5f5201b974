using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Tests;

/// <summary>One word of a good card spoiled: it is accepted or refused, never worse, and a refusal points near.</summary>
public sealed class MutationTests
{
    private static readonly string[] s_spoils = ["", "x", "the the", "5", "not", "valve", "{", ":", "shows", "Open"];

    [Fact]
    public void Read_OneWordSpoiled_IsReportedWithinTwoLines()
    {
        int tried = 0;
        int refused = 0;
        int near = 0;
        string[] lines = Cards.Leak.ReplaceLineEndings("\n").Split('\n');
        for (int line = 0; line < lines.Length; line++)
        {
            string[] words = lines[line].Split(' ');
            foreach ((int word, int by) in Enumerable.Range(0, words.Length).SelectMany(w => new[] { (w, 0), (w, 3), (w, 7) }))
            {
                tried++;
                string spoil = s_spoils[(word + line + by) % s_spoils.Length];
                string spoilt = string.Join(' ', words.Select((w, i) => i == word ? spoil : w));
                (Card? card, DiagnosticList found) = Cards.Read(string.Join('\n', lines.Select((l, i) => i == line ? spoilt : l)));
                if (card is null || card.HasErrors)
                {
                    refused++;
                    near += found.Any(d => d.Severity == Severity.Error && Math.Abs(d.Span.Line - (line + 1)) <= 2) ? 1 : 0;
                }
            }
        }

        Assert.True(tried >= 500, $"{tried} tried");
        Assert.InRange(refused, tried / 3, tried - 1);
        Assert.True(near >= 0.95 * refused, $"{near} of {refused} placed within two lines");
    }
}
