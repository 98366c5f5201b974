using System.Collections.Immutable;
using System.Text;
using Sightglass.Basics.Quantities;

namespace Sightglass.Cards.Programs;

/// <summary>What a person says, with the places where numbers go.</summary>
public sealed record TextTemplate(ImmutableArray<TextPart> Parts)
{
    public static readonly TextTemplate Empty = new([]);

    /// <summary>The text with the calculations themselves where numbers go, as the card writes them: the same in every run.</summary>
    public string Form { get; } = string.Concat(Parts.Select(p => p switch
    {
        TextPart.Words words => words.Text,
        TextPart.Value value => $"{{{value.Expression.Text}}}",
        _ => "",
    }));

    private readonly bool _isFixed = Parts.All(p => p is TextPart.Words);

    /// <summary>The text as said, with the numbers written down so far (SI, by index of <see cref="CardProgram.Names"/>).</summary>
    public string Say(ReadOnlySpan<double> written)
    {
        if (_isFixed)
        {
            return Form;
        }

        StringBuilder text = new();
        foreach (TextPart part in Parts)
        {
            switch (part)
            {
                case TextPart.Words words:
                    text.Append(words.Text);
                    break;
                case TextPart.Value value:
                    text.Append(QuantityFormat.Text(value.Expression.Evaluate(written), value.Unit, value.Resolution));
                    break;
            }
        }

        return text.ToString();
    }
}
