using Sightglass.Paper.Document;

namespace Sightglass.Paper.Tests;

/// <summary>The words of a paper in the order of reading, told from the paper itself.</summary>
internal static class PaperWordsOf
{
    public static IEnumerable<string> Block(PaperBlock block) => block switch
    {
        PaperBlock.Heading h => [h.Number ?? "", h.Text.Plain, h.Aside ?? ""],
        PaperBlock.Paragraph p => [p.Tag ?? "", p.Text.Plain],
        PaperBlock.Bullets b => b.Lines.Select(l => l.Plain),
        PaperBlock.Ticks t => t.Lines.Select(l => l.Plain),
        PaperBlock.Steps s => s.Lines.SelectMany(l => l switch
        {
            StepLine.Step step => [step.Label, l.Text.Plain],
            StepLine.Notice n => [n.Word.ToString().ToUpperInvariant(), l.Text.Plain],
            _ => new[] { "–", l.Text.Plain },
        }),
        PaperBlock.Table t => t.Heads.Concat(t.Rows.SelectMany(r => r.Select(c => c.Plain))),
        PaperBlock.Notice n => [n.Word.ToString().ToUpperInvariant(), n.Text.Plain],
        PaperBlock.Picture p => [p.Caption.Plain],
        PaperBlock.Photos p => p.Row.Select(r => r.Caption.Plain),
        PaperBlock.Code c => [c.Says, c.Address],
        PaperBlock.Box b => b.Blocks.SelectMany(Block),
        PaperBlock.Columns c => c.Left.Concat(c.Right).SelectMany(Block),
        _ => [],
    };

    public static IEnumerable<PaperBlock.Heading> Headings(PaperBlock block) => block switch
    {
        PaperBlock.Heading h => [h],
        PaperBlock.Columns c => c.Left.Concat(c.Right).SelectMany(Headings),
        _ => [],
    };
}
