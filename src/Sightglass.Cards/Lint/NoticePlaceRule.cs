using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>A notice stands directly before its step, never after it or last.</summary>
internal sealed class NoticePlaceRule() : LintRule(7)
{
    public override void Check(LintContext card)
    {
        CardElement? next = null;
        foreach (CardElement element in card.Card.Elements.Reverse())
        {
            switch (element)
            {
                case CardElement.Blank or CardElement.Comment:
                    break;
                case CardElement.Notice notice:
                    if (next is not CardElement.Step)
                    {
                        card.Found.Add(LintMessages.NoticePlace(notice.Span));
                    }

                    break;
                default:
                    next = element;
                    break;
            }
        }
    }
}
